import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { commandTable } from "../../src/cli/command-table.ts";
import { holdband, root } from "./run-holdband.ts";

/** Golden files are written anew by `npm run golden`, never by the tests themselves. */
const golden = (name: string): string =>
  join(root, "tests", "cli", "golden", "help", `${name}.txt`);

describe("commandTable", () => {
  it("names each command once, and each of its options once", () => {
    const names = commandTable.map(({ name }) => name);
    expect(new Set(names).size).toBe(names.length);
    for (const { name, options } of commandTable) {
      const flags = options.map(([, form]) => form.split(" ")[0]);
      expect(new Set(flags).size, name).toBe(flags.length);
    }
  });

  it("gives every command --json and an example of its own", () => {
    for (const { name, options, example } of commandTable) {
      expect(options.map(([, form]) => form)).toContain("--json");
      expect(example).toContain(`\nExample:\n  holdband ${name}`);
    }
  });

  it.each(commandTable.map(({ name }) => name))("shows the help of %s (golden)", async (name) => {
    const run = holdband([name, "--help"]);
    expect(run).toMatchObject({ exitCode: 0, err: "" });
    await expect(run.out).toMatchFileSnapshot(golden(name));
  });

  it("shows every command in the help of all (golden)", async () => {
    const { out } = holdband(["--help"]);
    for (const { name } of commandTable) expect(out).toContain(`\n  ${name} `);
    await expect(out).toMatchFileSnapshot(golden("all"));
  });

  it("loads each command's code when it is asked for", async () => {
    for (const { load } of commandTable) {
      // oxlint-disable-next-line no-await-in-loop -- one after the other, as a person would
      expect(typeof (await load())).toBe("function");
    }
  });
});
