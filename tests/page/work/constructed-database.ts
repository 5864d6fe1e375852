/**
 * A stand-in for a browser's database, with as much of it as one key-value store
 * needs: transactions are whole or not at all and run one after the other, and
 * writing fails over a size. What real browsers do is looked at in one.
 */
interface Request {
  result: unknown;
  error: DOMException | null;
  onsuccess: (() => void) | null;
  onerror: (() => void) | null;
}

type Values = Map<string, unknown>;

const soon = (work: () => void): void => void setTimeout(work, 0);

const sizeOf = (value: unknown): number => {
  if (typeof value === "string") return value.length;
  const content = (value as { content?: Blob } | undefined)?.content;
  return content?.size ?? 0;
};

/** Room in characters and bytes, over all values. */
export const constructedDatabase = (room = Infinity) => {
  const databases = new Map<string, Values>();
  let last = Promise.resolve();

  const transaction = (values: Values) => {
    const changed: Values = new Map();
    const done = { oncomplete: null, onabort: null, onerror: null, error: null } as {
      oncomplete: (() => void) | null;
      onabort: (() => void) | null;
      onerror: (() => void) | null;
      error: DOMException | null;
    };
    const pending: (() => void)[] = [];
    const asked = (work: () => unknown): Request => {
      const request: Request = { result: undefined, error: null, onsuccess: null, onerror: null };
      pending.push(() => {
        request.result = work();
        request.onsuccess?.();
      });
      return request;
    };
    const finish = (): void => {
      const used = [...changed.values()].reduce<number>((sum, value) => sum + sizeOf(value), 0);
      if (used > room) {
        done.error = new DOMException("full", "QuotaExceededError");
        done.onabort?.();
        return;
      }
      values.clear();
      for (const [key, value] of changed) values.set(key, value);
      done.oncomplete?.();
    };
    const run = (): void => {
      for (const [key, value] of values) changed.set(key, value);
      for (let next = pending.shift(); next !== undefined; next = pending.shift()) next();
      finish();
    };
    last = last.then(
      () =>
        new Promise((resolve) => {
          soon(() => {
            run();
            soon(resolve);
          });
        }),
    );
    return {
      objectStore: () => ({
        transaction: done,
        get: (key: string) => asked(() => changed.get(key)),
        put: (value: unknown, key: string) => asked(() => changed.set(key, value)),
        delete: (key: string) => asked(() => changed.delete(key)),
        clear: () => asked(() => changed.clear()),
        getAll: () => asked(() => [...changed.values()]),
        getAllKeys: () => asked(() => [...changed.keys()]),
      }),
    };
  };

  const open = (name: string) => {
    const values: Values = databases.get(name) ?? new Map<string, unknown>();
    databases.set(name, values);
    const request: Request & { onupgradeneeded: (() => void) | null } = {
      result: {
        createObjectStore: () => undefined,
        transaction: () => transaction(values),
        onclose: null,
      },
      error: null,
      onsuccess: null,
      onerror: null,
      onupgradeneeded: null,
    };
    soon(() => request.onsuccess?.());
    return request;
  };
  return { open, databases };
};
