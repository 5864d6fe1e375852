/**
 * A process that works on a kitchen folder until it is done or killed, and says
 * on standard output, line by line, what has been promised to be on the disk.
 */
import { appendFileSync, writeSync } from "node:fs";
import { join } from "node:path";
import { setTimeout as sleep } from "node:timers/promises";
import { withFolderLock } from "../../src/folder/folder-lock.ts";
import { updateKitchen } from "../../src/folder/kitchen-file.ts";
import { storeRawFile, storeRawText } from "../../src/folder/raw-files.ts";
import { done, failed, problemText } from "../../src/problem.ts";
import type { Outcome } from "../../src/problem.ts";
import { dieAtStep } from "./die-at-step.ts";
import { versionOf, versionedText } from "./versioned-text.ts";

/* oxlint-disable no-await-in-loop -- one step after the other is what is tested */

const [, , mode = "", folder = "", count = "0"] = process.argv;
const writer = `${process.pid}`;
const say = (line: string): void => void writeSync(1, `${line}\n`);

const must = <Value>(outcome: Outcome<Value>): Value => {
  if (outcome.ok) return outcome.value;
  say(`problem ${problemText(outcome.problem)}`);
  process.exit(3);
};

/** One more than what is there; the number is promised only once the update has returned. */
const nextVersion = async (): Promise<number> => {
  let version = -1;
  const updated = await updateKitchen(
    folder,
    (text) => {
      const found = versionOf(text);
      if (found === null) return failed("internal", { what: "a torn kitchen.yaml" });
      version = found + 1;
      return done(versionedText(version, writer));
    },
    { patience: 60_000 },
  );
  must(updated);
  return version;
};

const updates = async (): Promise<void> => {
  for (let turn = 0; turn < Number(count); turn += 1) say(`version ${await nextVersion()}`);
};

/** Kitchen, typed readings, a logger's file. */
const everything = async (): Promise<void> => {
  const version = await nextVersion();
  say(`version ${version}`);
  const typed = await storeRawText(folder, "typed.csv", versionedText(version, "typed"));
  say(`raw ${must(typed).path}`);
  say(`raw ${must(await storeRawFile(folder, join(folder, "source.csv"))).path}`);
};

const forever = async (): Promise<void> => {
  for (;;) await everything();
};

/** Once, and dead at the step of the given number. */
const dying = async (): Promise<void> => {
  const steps = await dieAtStep(Number(count));
  await everything();
  say(`steps ${steps()}`);
};

/** Takes the lock again and again, and sometimes dies with it. */
const storm = async (): Promise<void> => {
  const log = join(folder, "log");
  for (let turn = 0; turn < Number(count); turn += 1) {
    const held = await withFolderLock(
      folder,
      async () => {
        appendFileSync(log, `in ${writer}\n`);
        await sleep(Math.random() * 3);
        if (Math.random() < 0.15) process.kill(process.pid, "SIGKILL");
        appendFileSync(log, `out ${writer}\n`);
        return done(undefined);
      },
      { patience: 60_000 },
    );
    must(held);
  }
};

const modes: Readonly<Record<string, () => Promise<void>>> = { updates, forever, dying, storm };

say("ready");
await modes[mode]?.();
