/**
 * Which water tests a person makes of an appliance, one after the other. Two of
 * three act on what they have read: where no test so far lies in a culture's
 * window they go on from the nearest, up or down as needed, and of programs try
 * one they have not tried. The others test what comes to mind.
 */
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
  const actsOnReadings = random.chance(2 / 3);
  const made: PlannedTest[] = [];
  while (made.length < count) {
    const { setting, container } = nextChosen(random, offered, made, actsOnReadings);
    made.push({
      setting,
      container,
      probes: sampledProbes(random, container),
      mishap: random.weighted<Mishap | null>([
        [null, 90],
        ["too short", 4],
        ["unreadable", 3],
        ["missing", 3],
      ]),
    });
  }
  return made;
}

function nextChosen(
  random: Random,
  offered: Offered,
  made: readonly PlannedTest[],
  actsOnReadings: boolean,
): Chosen {
  const last = made.at(-1);
  if (last === undefined) return firstTest(random, offered);
  if (!actsOnReadings) return whatComesToMind(random, offered, made);
  if (last.mishap !== null) return last;
  return towardsUnmet(random, offered, made) ?? whatComesToMind(random, offered, made);
}

const firstTest = (random: Random, { response, containers, cultures }: Offered): Chosen => ({
  setting: aimedAt(random, response, cultures[0]!.target),
  container: containers[0]!,
});

/** For the first culture that no readable test serves, from the test that came nearest; null where all are served. */
function towardsUnmet(
  random: Random,
  { response, cultures }: Offered,
  made: readonly PlannedTest[],
): Chosen | null {
  const read = made
    .filter(({ mishap }) => mishap === null)
    .map((one) => ({ one, celsius: foodLevel(response, one) + random.normal(0, 0.3) }));
  for (const { low, high, target } of cultures) {
    if (read.some(({ celsius }) => celsius >= low && celsius <= high)) continue;
    const nearest = read.toSorted(
      (a, b) => Math.abs(a.celsius - target) - Math.abs(b.celsius - target),
    )[0]!;
    const setting = movedBy(
      random,
      response,
      { from: nearest.one.setting, made },
      target - nearest.celsius,
    );
    if (setting !== null) return { setting, container: nearest.one.container };
  }
  return null;
}

/** As the room usually is, 20 degC. */
const foodLevel = ({ level }: RespondingControl, { setting, container }: Chosen): number =>
  level(setting) - container.shareLost * (level(setting) - 20);

interface From {
  readonly from: Setting;
  readonly made: readonly PlannedTest[];
}

/** A display is moved by what is missing, a dial by one mark, programs are tried in turn; null where nothing is left. */
function movedBy(
  random: Random,
  { control, settings }: RespondingControl,
  { from, made }: From,
  by: number,
): Setting | null {
  const at = settings.indexOf(from);
  if (control.kind === "steps") {
    const steps = Math.round(by / control.step);
    const to = Math.min(settings.length - 1, Math.max(0, at + steps));
    return to === at ? null : settings[to]!;
  }
  if (control.kind === "marks") return settings[at + Math.sign(by)] ?? null;
  const untried = settings.filter((setting) => made.every((one) => one.setting !== setting));
  return untried.length === 0 ? null : random.choice(untried);
}

/** Again, a neighbour, another container, or another culture's temperature. */
function whatComesToMind(random: Random, offered: Offered, made: readonly Chosen[]): Chosen {
  const { response, containers, cultures } = offered;
  const { setting, container } = random.chance(0.7) ? made.at(-1)! : random.choice(made);
  const what = random.weighted([
    ["again", 20],
    ["neighbour", 35],
    ["container", 25],
    ["culture", 20],
  ] as const);
  if (what === "neighbour") return { container, setting: neighbour(random, response, setting) };
  if (what === "container") return { container: random.choice(containers), setting };
  if (what === "culture")
    return { container, setting: aimedAt(random, response, random.choice(cultures).target) };
  return { setting, container };
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
