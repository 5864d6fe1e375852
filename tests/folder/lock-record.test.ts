import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { newRecord, readLock, recordText } from "../../src/folder/lock-record.ts";
import { temporaryFolder, write } from "./temporary-folder.ts";

describe("lock records", () => {
  it("come back as they were written, and none is like another", async () => {
    const record = newRecord();
    const path = write(temporaryFolder(), "lock", recordText(record));
    expect(await readLock(path)).toMatchObject({ path, token: record.token, record });
    expect(newRecord().token).not.toBe(record.token);
    expect(record.pid).toBe(process.pid);
  });

  it("are null where there is no file", async () => {
    expect(await readLock(join(temporaryFolder(), "lock"))).toBeNull();
  });

  it.each([
    ["nothing", ""],
    ["half a record", recordText(newRecord()).slice(0, 60)],
    ["something else", "hello"],
    ["a list", "[1]"],
    ["a token that is a path", recordText({ ...newRecord(), token: "../../etc/passwd" })],
    ["a process number that names a group", recordText({ ...newRecord(), pid: -1 })],
    ["a host that moves the cursor", recordText({ ...newRecord(), host: "a\u001b[2Jb" })],
    ["no date", recordText({ ...newRecord(), since: "yesterday" })],
    ["very much", "x".repeat(1_000_000)],
  ])("are of nobody where the file holds %s", async (_, text) => {
    const found = await readLock(write(temporaryFolder(), "lock", text));
    expect(found).toMatchObject({ token: "unreadable", record: null });
    expect(Math.abs((found?.modified ?? 0) - Date.now())).toBeLessThan(60_000);
  });
});
