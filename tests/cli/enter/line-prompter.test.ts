import { PassThrough } from "node:stream";
import { describe, expect, it } from "vitest";
import { linePrompter } from "../../../src/cli/enter/line-prompter.ts";

const terminal = (colour = false) => {
  const input = new PassThrough();
  const output = new PassThrough();
  let shown = "";
  output.on("data", (part: Buffer) => {
    shown += part.toString();
  });
  return { input, prompter: linePrompter({ input, output, colour }), shown: () => shown };
};

describe("linePrompter", () => {
  it("loses none of several lines pasted at once", async () => {
    const { input, prompter } = terminal();
    const first = prompter.line("1 > ");
    input.write("21:30 20.1\n22:30 38.4\n23:30 41.2\n");
    expect(await first).toBe("21:30 20.1");
    expect(await prompter.line("2 > ")).toBe("22:30 38.4");
    expect(await prompter.line("3 > ")).toBe("23:30 41.2");
    prompter.close();
  });

  it("gives null when stopped by Ctrl-C or at the end of the input, then always", async () => {
    const stopped = terminal();
    const line = stopped.prompter.line("1 > ");
    stopped.input.write("\u0003");
    expect(await line).toBeNull();
    expect(await stopped.prompter.line("1 > ")).toBeNull();
    expect(stopped.shown().endsWith("\n")).toBe(true);
    const ended = terminal();
    const last = ended.prompter.line("1 > ");
    ended.input.end();
    expect(await last).toBeNull();
  });

  it("colours only where colours are wanted", () => {
    const [plain, coloured] = [terminal(), terminal(true)];
    for (const { prompter } of [plain, coloured]) {
      prompter.say("said");
      prompter.echo("understood");
      prompter.warn("refused");
      prompter.close();
    }
    expect(plain.shown()).toBe("said\nunderstood\nrefused\n");
    expect(coloured.shown()).toContain("\u001B[2munderstood\u001B[0m");
  });
});
