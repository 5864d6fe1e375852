/**
 * A response where settings are no temperatures: a column for each program or
 * mark with the containers beside each other in it; where nothing can be set, a
 * column for each container.
 */
import type { TestedPoint } from "../../advice/response-types.ts";
import type { Setting } from "../../kitchen/kitchen.ts";
import { colour, toScale } from "./chart-theme.ts";
import type { Plot } from "./plot.ts";
import { containerLook, corridorOpacity } from "./response-looks.ts";
import { cutName } from "./response-names.ts";
import { testRule } from "./response-steps.ts";
import type { Drawn, Panel } from "./response-steps.ts";
import type { DrawnCurve } from "./response-view.ts";
import { down } from "./vertical.ts";

const nameOf = (setting: Setting): string =>
  setting.kind === "program" ? setting.program : setting.kind === "mark" ? setting.mark : "";

/** "mark 3" where there is room for it, "3" where not. */
const wordsOf = (setting: Setting, most: number): readonly string[] => {
  const name = nameOf(setting);
  const full = `${setting.kind} ${name}`;
  return setting.kind === "mark" && full.length < most ? [full] : inLines(name, most);
};

const keyOf = (setting: Setting): string => `${setting.kind} ${nameOf(setting)}`;

/** Broken into lines of at most so many letters, two at most. */
const inLines = (name: string, most: number): readonly string[] => {
  const lines: string[] = [];
  for (const word of name.split(/\s+/)) {
    const last = lines.at(-1);
    if (last !== undefined && last.length + word.length < most)
      lines.push(`${lines.pop()} ${word}`);
    else lines.push(word);
  }
  const two = lines.length > 2 ? [lines[0] ?? "", lines.slice(1).join(" ")] : lines;
  return two.map((line) => cutName(line, most));
};

interface Columns {
  readonly words: readonly (readonly string[])[];
  /** Middle of a container's box at a setting, px; null where there is no such column. */
  readonly place: (setting: Setting, container: string) => number | null;
  readonly boxWidth: number;
}

const letterWidth = 6.6;

const containerColumns = (curves: readonly DrawnCurve[], width: number): Columns => {
  const column = width / Math.max(curves.length, 1);
  return {
    words: curves.map(({ name }) => inLines(name, Math.floor(column / letterWidth))),
    place: (_, container) => {
      const at = curves.findIndex((curve) => curve.container === container);
      return at < 0 ? null : (at + 0.5) * column;
    },
    boxWidth: Math.min(34, column * 0.6),
  };
};

const settingColumns = (curves: readonly DrawnCurve[], width: number): Columns => {
  const settings = new Map(
    curves.flatMap(({ points }) => points.map(({ setting }) => [keyOf(setting), setting] as const)),
  );
  const keys = [...settings.keys()];
  const column = width / Math.max(keys.length, 1);
  const share = (column * 0.84) / Math.max(curves.length, 1);
  return {
    words: [...settings.values()].map((setting) =>
      wordsOf(setting, Math.floor(column / letterWidth)),
    ),
    place: (setting, container) => {
      const at = keys.indexOf(keyOf(setting));
      const beside = curves.findIndex((curve) => curve.container === container);
      return at < 0 || beside < 0
        ? null
        : (at + 0.5) * column + (beside - (curves.length - 1) / 2) * share;
    },
    boxWidth: Math.min(30, share * 0.8),
  };
};

const boxesOf = (
  curves: readonly DrawnCurve[],
  { unit, vertical }: Panel,
  { place, boxWidth }: Columns,
): Pick<Plot, "boxes" | "rules"> => {
  const y = (celsius: number): number => down(vertical, toScale(unit, celsius));
  const placed = curves.flatMap(({ container, at, points }) =>
    points.flatMap(({ setting, level }) => {
      const x = place(setting, container);
      const beyond = x === null || y(level.high) >= vertical.height || y(level.low) <= 0;
      return beyond ? [] : [{ level, look: containerLook(at), middle: x }];
    }),
  );
  return {
    boxes: placed.map(({ level, look, middle }) => ({
      left: middle - boxWidth / 2,
      right: middle + boxWidth / 2,
      top: y(level.high),
      bottom: y(level.low),
      fill: look.stroke,
      opacity: corridorOpacity,
      stroke: null,
    })),
    rules: placed
      .filter(({ level }) => y(level.mean) > 0 && y(level.mean) < vertical.height)
      .map(({ level, look, middle }) => ({
        left: middle - boxWidth / 2,
        right: middle + boxWidth / 2,
        top: y(level.mean),
        bottom: y(level.mean),
        stroke: look.stroke,
        width: 2,
        dash: look.dash,
      })),
  };
};

/** `byContainer` where nothing can be set. */
export const columnsResponse = (
  curves: readonly DrawnCurve[],
  tests: readonly TestedPoint[],
  panel: Panel,
  byContainer: boolean,
): Drawn & Pick<Plot, "boxes"> => {
  const columns = (byContainer ? containerColumns : settingColumns)(curves, panel.width);
  const drawn = boxesOf(curves, panel, columns);
  const count = columns.words.length;
  const placed = tests.flatMap((test) => {
    const x = columns.place(test.setting, test.container);
    const at = curves.find(({ container }) => container === test.container)?.at ?? 0;
    return x === null ? [] : [{ test, x, look: containerLook(at) }];
  });
  return {
    x: {
      low: 0,
      high: Math.max(count, 1),
      ticks: columns.words.map((_, at) => at + 0.5),
      words: columns.words,
    },
    corridors: [],
    curves: [],
    boxes: drawn.boxes,
    rules: [
      ...drawn.rules,
      ...placed.map(({ test, x, look }) => testRule(test, x, panel, look.stroke)),
    ],
    markers: placed.map(({ test, x, look }) => ({
      x,
      y: down(panel.vertical, toScale(panel.unit, test.mean)),
      shape: look.shape,
      fill: test.place === "food" ? look.stroke : colour.paper,
      stroke: test.place === "food" ? colour.paper : look.stroke,
    })),
  };
};
