/** A kitchen in the page: from nothing to a report, kept between visits, in and out as files. */
import { readFileSync, readdirSync, writeFileSync, mkdirSync } from "node:fs";
import { dirname, join } from "node:path";
import { unzipSync } from "fflate";
import type { Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { holdband } from "../cli/run-holdband.ts";
import { noBrowser } from "../report/browser.ts";
import {
  demoFiles,
  pageUnderTest,
  fill,
  press,
  reading,
  root,
  saved,
  section,
  told,
  view,
  visit,
  visitAgain,
} from "./built-page.ts";

const demo = join(root, "fixtures", "kitchen");
const lowCulture = "Low long-hold milk culture (Limosilactobacillus reuteri)";

const openFiles = async (page: Page, files: readonly string[]): Promise<void> => {
  await view(page, "Files");
  await page
    .getByLabel("kitchen.yaml, its readings, or a zipped kitchen", { exact: true })
    .setInputFiles(files);
};

const enter = async (
  page: Page,
  title: string,
  add: string,
  fields: Readonly<Record<string, string>>,
): Promise<void> => {
  const part = section(page, title);
  await press(part, add);
  await fill(part, fields);
  await press(part, "Enter it");
  await told(page).getByText("Entered.").waitFor();
  await part.getByRole("button", { name: add, exact: true }).waitFor();
};

/** Culture, appliance, container and thermometer of a first kitchen. */
const enterKitchen = async (page: Page): Promise<void> => {
  await view(page, "My kitchen");
  await enter(page, "Cultures", "Enter a culture", { "Which culture": lowCulture });
  await enter(page, "Appliances", "Enter an appliance", {
    Name: "Step cooker",
    Kind: "cooker",
    "What can be set on it?": "a temperature, in steps",
    "From the lowest to the highest setting": "30..45",
    "Size of one step": "0.5",
  });
  await enter(page, "Containers", "Enter a container", {
    Name: "Jars",
    "How the food stands": "jars in water",
  });
  await enter(page, "Thermometers", "Enter a thermometer", {
    Name: "Pen",
    "Smallest step of its display": "0.1",
    "What it showed in melting ice": "0.3 0.2 0.3",
    "What it showed in boiling water": "95.5 95.4",
    "Height above sea level where it boiled": "1450m",
  });
};

const addTest = async (page: Page, file: string, setting: string): Promise<void> => {
  const tests = section(page, "Water tests");
  await press(tests, "Enter a water test");
  await tests.getByLabel("The logger’s files", { exact: true }).setInputFiles(file);
  await fill(tests, {
    Appliance: "Step cooker",
    "Step cooker set to": setting,
    Container: "Jars",
    "Which thermometer or logger measured": "Pen",
  });
  await press(tests, "Store this water test");
  await told(page).getByText("Stored as").first().waitFor();
};

const unpacked = (bytes: Uint8Array, folder: string): void => {
  for (const [name, content] of Object.entries(unzipSync(bytes))) {
    if (name.endsWith("/")) continue;
    mkdirSync(dirname(join(folder, name)), { recursive: true });
    writeFileSync(join(folder, name), content);
  }
};

/** Where the kitchen lies in the zip: in its root, or in the one folder there. */
const kitchenIn = (folder: string): string => {
  const found = readdirSync(folder, { recursive: true, encoding: "utf8" }).find((name) =>
    name.endsWith("kitchen.yaml"),
  );
  return dirname(join(folder, found ?? ""));
};

/** Without what differs by its nature: the build, and where the command line wrote its page. */
const figures = (json: string): unknown => {
  const { holdband: _, report: __, ...rest } = JSON.parse(json);
  return rest;
};

describe.skipIf(noBrowser())("a kitchen in the page", () => {
  const under = pageUnderTest();

  it("is entered from nothing, judged, kept, saved, and read by the command line alike", async () => {
    const visitor = await visit(under());
    const { page } = visitor;
    await enterKitchen(page);
    await addTest(page, reading("adjustable-cooker.csv"), "38");
    await view(page, "Report");
    await page
      .getByRole("heading", { level: 1, name: "Which set-up holds which culture" })
      .waitFor();
    await page.getByRole("button", { name: "Save this report" }).waitFor();
    const json = await saved(page, "Save the figures as JSON");

    const again = await visitAgain(visitor, under());
    await view(again.page, "Files");
    const zip = await saved(again.page, "Save kitchen and readings (zip)");
    const into = join(under().folder, "unpacked");
    unpacked(zip.bytes, into);
    const run = holdband(["report", "--json"], { cwd: kitchenIn(into) });
    expect(figures(json.bytes.toString())).toEqual(figures(run.out));
    expect([visitor.complaints, visitor.requests]).toEqual([[], []]);
    await visitor.context.close();
  });

  it("says a thermometer's doubtful check at its form, and takes it when it is confirmed", async () => {
    const { page, context } = await visit(under());
    await view(page, "My kitchen");
    const part = section(page, "Thermometers");
    await press(part, "Enter a thermometer");
    await fill(part, { Name: "Pen", "What it showed in melting ice": "6.5" });
    await press(part, "Enter it");
    const alert = part.getByRole("alert");
    await alert.waitFor();
    expect(await alert.textContent()).not.toContain("--");
    await part.getByLabel("I have looked again, and the check stands as it is").check();
    await press(part, "Enter it");
    await told(page).getByText("Entered.").waitFor();
    await context.close();
  });

  it("opens a kitchen folder's files and gives kitchen.yaml back byte for byte", async () => {
    const { page, context } = await visit(under());
    await openFiles(page, demoFiles);
    await told(page).getByText("Opened kitchen.yaml").waitFor();
    const yaml = await saved(page, "Save kitchen.yaml alone");
    expect(yaml.bytes.toString()).toBe(readFileSync(join(demo, "kitchen.yaml"), "utf8"));
    await context.close();
  });

  it("says where kitchen.yaml is wrong, as the command line does, and keeps what was there", async () => {
    const wrong = join(under().folder, "wrong");
    mkdirSync(wrong);
    const text = readFileSync(join(demo, "kitchen.yaml"), "utf8").replace(
      "kind: cooker",
      "kind: oven",
    );
    writeFileSync(join(wrong, "kitchen.yaml"), text);
    const { page, context } = await visit(under());
    await openFiles(page, demoFiles);
    await told(page).getByText("Opened kitchen.yaml").waitFor();
    await openFiles(page, [join(wrong, "kitchen.yaml")]);
    const alert = section(page, "Open a kitchen").getByRole("alert");
    await alert.waitFor();
    const run = holdband(["appliance"], { cwd: wrong });
    expect(await alert.textContent()).toBe(
      run.err.trim().replaceAll(join(wrong, "kitchen.yaml"), "kitchen.yaml"),
    );
    const yaml = await saved(page, "Save kitchen.yaml alone");
    expect(yaml.bytes.toString()).toContain("kind: cooker");
    await context.close();
  });

  it("tells the story of a re-check: three batches, two of them separated, a new test, an answer", async () => {
    const { page, context } = await visit(under());
    await enterKitchen(page);
    await addTest(page, reading("adjustable-cooker.csv"), "38");
    const batches = section(page, "Batches");
    const log = async (date: string, generation: string, separated: string): Promise<string> => {
      await press(batches, "Log a batch");
      await fill(batches, {
        Culture: lowCulture,
        Appliance: "Step cooker",
        "Step cooker set to": "38",
        Container: "Jars",
        "Day it was set, if not today": date,
        Generation: generation,
        "Did whey part from the curd?": separated,
      });
      await press(batches, "Enter it");
      await batches.getByRole("button", { name: "Log a batch", exact: true }).waitFor();
      return (await told(page).textContent()) ?? "";
    };
    await log("2026-10-10", "1", "none");
    await log("2026-10-15", "2", "much");
    expect(await log("2026-10-22", "3", "a little")).toMatch(/test/);
    await addTest(page, reading("adjustable-cooker-again.csv"), "38");
    await view(page, "Files");
    const into = join(under().folder, "rechecked");
    unpacked((await saved(page, "Save kitchen and readings (zip)")).bytes, into);
    const { recheck } = JSON.parse(holdband(["recheck", "--json"], { cwd: kitchenIn(into) }).out);
    const [answer] = recheck.rechecks;
    await view(page, "Report");
    await page.locator("#recheck").waitFor();
    const shown = (await page.getByRole("main").innerText())
      .split("Is it still what it was?")
      .at(-1);
    expect(shown?.toLowerCase()).toContain(answer.word);
    await context.close();
  });

  it("keeps a night from the first view as a water test", async () => {
    const { page, context } = await visit(under());
    await enterKitchen(page);
    await view(page, "One night");
    await page
      .getByRole("main")
      .getByLabel("The logger’s files", { exact: true })
      .first()
      .setInputFiles(reading("adjustable-cooker.csv"));
    await fill(page, { Culture: lowCulture });
    await press(page, "Read the night");
    await press(page, "Keep this night in my kitchen");
    const tests = section(page, "Water tests");
    await fill(tests, { Appliance: "Step cooker", "Step cooker set to": "38", Container: "Jars" });
    await press(tests, "Store this water test");
    await told(page).getByText("Stored as").first().waitFor();
    await context.close();
  });

  it("forgets everything when it is asked to", async () => {
    const visitor = await visit(under());
    const { page } = visitor;
    await openFiles(page, demoFiles);
    await told(page).getByText("Opened kitchen.yaml").waitFor();
    await press(page, "Erase everything kept here");
    await press(page, "Erase the kitchen and all its readings");
    await told(page).getByText("erased").first().waitFor();
    const again = await visitAgain(visitor, under());
    await view(again.page, "My kitchen");
    expect(await section(again.page, "Appliances").getByRole("listitem").count()).toBe(0);
    await view(again.page, "Files");
    const text = (await saved(again.page, "Save kitchen.yaml alone")).bytes.toString();
    expect(text).not.toContain("adjustable-cooker.csv");
    await visitor.context.close();
  });

  it("says that what was kept cannot be read, saves it, and opens another in its place", async () => {
    const visitor = await visit(under());
    await view(visitor.page, "Files");
    await openFiles(visitor.page, demoFiles);
    await told(visitor.page).getByText("Opened kitchen.yaml").waitFor();
    // As a later version, or another program, might have left it.
    await visitor.page.evaluate(async () => {
      // oxlint-disable-next-line unicorn/consistent-function-scoping -- it runs in the page
      const done = <Value>(request: IDBRequest<Value>) =>
        new Promise<Value>((resolve) => {
          request.onsuccess = () => resolve(request.result);
        });
      const database = await done(indexedDB.open("holdband"));
      const [name = ""] = database.objectStoreNames;
      const store = database.transaction(name, "readwrite").objectStore(name);
      await done(store.put("holdband: 99\n", "kitchen.yaml"));
    });
    const { page } = await visitAgain(visitor, under());
    await page.getByRole("heading", { name: "The kitchen kept here cannot be read" }).waitFor();
    expect(await page.getByRole("alert").textContent()).toContain("holdband");
    const yaml = await saved(page, "Save kitchen.yaml alone");
    expect(yaml.bytes.toString()).toBe("holdband: 99\n");
    const field = "Open another: kitchen.yaml, its readings, or a zipped kitchen";
    await page.getByLabel(field, { exact: true }).setInputFiles(demoFiles);
    await told(page).getByText("Opened kitchen.yaml").waitFor();
    await visitor.context.close();
  });

  it("takes an entry out when it is asked twice, and says why where a test needs it", async () => {
    const { page, context } = await visit(under());
    await openFiles(page, demoFiles);
    await told(page).getByText("Opened kitchen.yaml").waitFor();
    await view(page, "My kitchen");
    const jars = "Jars in water";
    await press(section(page, "Containers"), `Take out container ${jars}`);
    await press(section(page, "Containers"), `Take ${jars} out`);
    await told(page).getByText("step-cooker-38-jars").waitFor();
    const tests = section(page, "Water tests");
    await press(tests, "Take out water test box-3-rack");
    await press(tests, "Take box-3-rack out");
    await told(page).getByText("box-3-rack was taken out").waitFor();
    expect(await tests.getByText("box-3-rack", { exact: true }).count()).toBe(0);
    await context.close();
  });
});
