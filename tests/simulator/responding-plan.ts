/** Which water tests a person makes of an appliance, one after the other. */
import type { Culture } from "../../src/culture/culture.ts";
import type { Setting } from "../../src/kitchen/kitchen.ts";
import type { Random } from "./random.ts";
import type { RespondingContainer } from "./responding-container.ts";
import type { RespondingControl } from "./responding-control.ts";

export type Mishap = "too short" | "unreadable" | "missing";

export interface PlannedTest {
  readonly setting: Setting;
  readonly container: RespondingContainer;
  readonly probes: "food" | "bath" | "food and bath";
  readonly mishap: Mishap | null;
}

export interface Offered {
  readonly response: RespondingControl;
  readonly containers: readonly RespondingContainer[];
  readonly cultures: readonly Culture[];
}

type Chosen = Pick<PlannedTest, "setting" | "container">;

/** None to five; the first at the first culture's own temperature, as if the control told the truth. */
export function sampleTestPlan(random: Random, offered: Offered): readonly PlannedTest[] {
  const count = random.weighted(
    [8, 14, 24, 22, 17, 15].map((weight, tests) => [tests, weight] as const),
  );
  const chosen: Chosen[] = [];
  while (chosen.length < count)
    chosen.push(
      chosen.length === 0 ? firstTest(random, offered) : nextTest(random, offered, chosen),
    );
  return chosen.map(({ setting, container }) => ({
    setting,
    container,
    probes: sampledProbes(random, container),
    mishap: random.weighted<Mishap | null>([
      [null, 90],
      ["too short", 4],
      ["unreadable", 3],
      ["missing", 3],
    ]),
  }));
}

const firstTest = (random: Random, { response, containers, cultures }: Offered): Chosen => ({
  setting: aimedAt(random, response, cultures[0]!.target),
  container: containers[0]!,
});

/** Again, a neighbour, another container, or another culture's temperature. */
function nextTest(random: Random, offered: Offered, made: readonly Chosen[]): Chosen {
  const { response, containers, cultures } = offered;
  const last = random.chance(0.7) ? made.at(-1)! : random.choice(made);
  const what = random.weighted([
    ["again", 20],
    ["neighbour", 35],
    ["container", 25],
    ["culture", 20],
  ] as const);
  if (what === "neighbour") return { ...last, setting: neighbour(random, response, last.setting) };
  if (what === "container") return { ...last, container: random.choice(containers) };
  if (what === "culture")
    return { ...last, setting: aimedAt(random, response, random.choice(cultures).target) };
  return last;
}

/** A display is believed; of programs and marks one is picked, a dial's more often near its middle. */
function aimedAt(
  random: Random,
  { control, settings }: RespondingControl,
  target: number,
): Setting {
  if (control.kind !== "steps") {
    const spread = settings.length - 1;
    return settings[Math.round((spread * (random.next() + random.next())) / 2)]!;
  }
  const at = Math.round((target - control.low) / control.step);
  return settings[Math.min(settings.length - 1, Math.max(0, at))]!;
}

/** Up to three degC further on a display, else the next mark or program, up or down. */
function neighbour(random: Random, response: RespondingControl, from: Setting): Setting {
  const { control, settings } = response;
  const at = settings.indexOf(from);
  const steps =
    control.kind === "steps" ? Math.max(1, Math.round(random.uniform(0.5, 3) / control.step)) : 1;
  const to = at + (random.chance(0.5) ? steps : -steps);
  return settings[to] ?? settings[at - (to - at)] ?? from;
}

function sampledProbes(random: Random, { container }: RespondingContainer): PlannedTest["probes"] {
  if (container.stands === "basin") return "food";
  return random.weighted<PlannedTest["probes"]>([
    ["food", 65],
    ["food and bath", 28],
    ["bath", 7],
  ]);
}
