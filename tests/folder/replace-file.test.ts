import { chmodSync, linkSync, mkdirSync, readFileSync, statSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { replaceFile } from "../../src/folder/replace-file.ts";
import { done, failed } from "../../src/problem.ts";
import { textOf, valueOf } from "./outcomes.ts";
import { namesIn, temporaryFolder, write } from "./temporary-folder.ts";

const read = (path: string): string => readFileSync(path, "utf8");
const isRoot = process.getuid?.() === 0;

describe("replaceFile", () => {
  it("writes a new file, texts and bytes, with nothing beside it", async () => {
    const folder = temporaryFolder();
    valueOf(await replaceFile(join(folder, "a"), "grüße"));
    expect(read(join(folder, "a"))).toBe("grüße");
    valueOf(await replaceFile(join(folder, "a"), new Uint8Array([0, 255, 10])));
    expect([...readFileSync(join(folder, "a"))]).toEqual([0, 255, 10]);
    expect(namesIn(folder)).toEqual(["a"]);
  });

  it("never writes into the old file: what has it open keeps reading the old one", async () => {
    const folder = temporaryFolder();
    const path = write(folder, "a", "old");
    linkSync(path, join(folder, "other-name"));
    valueOf(await replaceFile(path, "new"));
    expect(read(join(folder, "other-name"))).toBe("old");
    expect(read(path)).toBe("new");
  });

  it("keeps the version before, and of a new file none", async () => {
    const folder = temporaryFolder();
    const [path, previous] = [join(folder, "a"), join(folder, "before")];
    valueOf(await replaceFile(path, "1", { previous }));
    expect(namesIn(folder)).toEqual(["a"]);
    valueOf(await replaceFile(path, "2", { previous }));
    valueOf(await replaceFile(path, "3", { previous }));
    expect([read(path), read(previous)]).toEqual(["3", "2"]);
    expect(namesIn(folder)).toEqual(["a", "before"]);
  });

  it("goes on from where a kill left both names to one file", async () => {
    // Constructed: killed after the version before was kept, before the new one came.
    const folder = temporaryFolder();
    const path = write(folder, "a", "1");
    const previous = join(folder, "before");
    linkSync(path, previous);
    valueOf(await replaceFile(path, "2", { previous }));
    expect([read(path), read(previous)]).toEqual(["2", "1"]);
    expect(namesIn(folder)).toEqual(["a", "before"]);
  });

  it("keeps permissions", async () => {
    const folder = temporaryFolder();
    const path = write(folder, "a", "old");
    for (const mode of [0o600, 0o664, 0o644]) {
      chmodSync(path, mode);
      // oxlint-disable-next-line no-await-in-loop -- one after the other
      valueOf(await replaceFile(path, "new"));
      expect(statSync(path).mode % 0o1000).toBe(mode);
    }
  });

  it.skipIf(!isRoot)("keeps the owner when root writes", async () => {
    const { chownSync } = await import("node:fs");
    const folder = temporaryFolder();
    const path = write(folder, "a", "old");
    chownSync(path, 1234, 1234);
    valueOf(await replaceFile(path, "new"));
    expect(statSync(path)).toMatchObject({ uid: 1234, gid: 1234 });
  });

  it("changes nothing where the last check says no", async () => {
    const folder = temporaryFolder();
    const path = write(folder, "a", "3");
    const previous = write(folder, "before", "2");
    const outcome = await replaceFile(path, "4", {
      previous,
      lastCheck: () => Promise.resolve(failed("kitchen-changed-meanwhile", { file: path })),
    });
    expect(textOf(outcome)).toContain("was changed by something else");
    expect([read(path), read(previous)]).toEqual(["3", "2"]);
    expect(namesIn(folder)).toEqual(["a", "before"]);
  });

  it("keeps as the version before even what is saved into it during the last check", async () => {
    const folder = temporaryFolder();
    const path = write(folder, "a", "1");
    const previous = join(folder, "before");
    const lastCheck = () => {
      writeFileSync(path, "1, and somebody's line");
      return Promise.resolve(done(undefined));
    };
    valueOf(await replaceFile(path, "2", { previous, lastCheck }));
    expect(read(previous)).toBe("1, and somebody's line");
  });

  it("says why it cannot, and leaves no temporary file", async () => {
    const folder = temporaryFolder();
    mkdirSync(join(folder, "inner"));
    expect(textOf(await replaceFile(join(folder, "inner"), "x"))).toContain("it is a folder");
    const path = write(folder, "a", "old");
    expect(textOf(await replaceFile(path, "x", { previous: join(folder, "inner") }))).toContain(
      "could not be written",
    );
    expect(read(path)).toBe("old");
    expect(namesIn(folder)).toEqual(["a", "inner"]);
    expect(textOf(await replaceFile(join(folder, "no", "a"), "x"))).toContain(
      "the folder does not exist",
    );
    // The kernel's own tree takes no files, not even from root.
    expect(textOf(await replaceFile("/proc/a", "x"))).toContain("could not be written");
  });

  // Root may write everywhere, so permissions show nothing to it.
  it.skipIf(isRoot)("respects a file made read-only, and a folder that takes nothing", async () => {
    const folder = temporaryFolder();
    const path = write(folder, "a", "old");
    chmodSync(path, 0o444);
    expect(textOf(await replaceFile(path, "new"))).toContain("permission is denied");
    chmodSync(path, 0o644);
    chmodSync(folder, 0o555);
    expect(textOf(await replaceFile(path, "new"))).toContain("permission is denied");
    chmodSync(folder, 0o755);
    expect(read(path)).toBe("old");
  });
});
