import { describe, expect, it } from "vitest";
import { cultures } from "../../../../src/culture/catalogue.ts";
import { fieldsOf } from "../../../../src/page/screen/form/form-values.ts";
import { nightFields, nightOptions } from "../../../../src/page/screen/night/night-fields.ts";
import { sampleKitchen } from "../../../report/sample-kitchen.ts";

const { kitchen } = sampleKitchen();
const keys = (entered: Record<string, string>, typed = false): readonly string[] =>
  fieldsOf(nightFields(kitchen, cultures, typed)(entered)).map(({ key }) => key);

describe("nightFields", () => {
  it("asks for a window only where no culture brings one", () => {
    expect(keys({ culture: "yoghurt" })).not.toContain("low");
    expect(keys({ culture: "own" })).toEqual(expect.arrayContaining(["low", "high", "hours"]));
  });

  it("asks for ice and boiling water where the thermometer was checked", () => {
    expect(keys({ thermometerKnown: "checks" })).toEqual(
      expect.arrayContaining(["ice", "boiling", "altitude"]),
    );
    expect(keys({ thermometerKnown: "accuracy" })).toContain("thermometerAccuracy");
    expect(keys({})).not.toContain("ice");
  });

  it("asks typed readings for their day and files for their format", () => {
    expect(keys({}, true)).toContain("date");
    expect(keys({}, true)).not.toContain("decimal");
    expect(keys({})).toContain("decimal");
  });
});

describe("nightOptions", () => {
  it("are the command's options alone", () => {
    const values = { culture: ["yoghurt"], thermometerKnown: ["accuracy"], room: ["17..25"] };
    expect(nightOptions(values)).toEqual({ culture: ["yoghurt"], room: ["17..25"] });
  });

  it("have no culture where the window is one's own, and name a kitchen's thermometer", () => {
    const values = { culture: ["own"], low: ["36"], thermometerKnown: ["kitchen:pen"] };
    expect(nightOptions(values)).toEqual({ low: ["36"], kitchenThermometer: ["pen"] });
  });
});
