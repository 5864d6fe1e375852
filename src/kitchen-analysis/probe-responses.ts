import type { ProbeAnalysis } from "../analysis-types.ts";
import { fitContainerResponse } from "../container/fit-response.ts";
import type { ProbeResponse } from "../kitchen-analysis-types.ts";
import type { TemperatureRange } from "../kitchen/kitchen.ts";

/**
 * How each food probe of a water test follows each bath probe of it; none where
 * the food did not settle or the two saw too little together.
 *
 * @param room range stated for the room, degC; a probe in the room counts more
 */
export const probeResponses = (
  probes: readonly ProbeAnalysis[],
  room: TemperatureRange | null,
): readonly ProbeResponse[] => {
  const inRoom = probes.find(({ series }) => series.role === "room")?.series ?? room;
  return probes.flatMap((food, foodIndex) =>
    probes.flatMap((bath, bathIndex) => {
      const isPair = food.series.role === "food" && bath.series.role === "bath";
      const response = isPair ? responseOf(food, bath, inRoom) : null;
      return response === null ? [] : [{ food: foodIndex, bath: bathIndex, response }];
    }),
  );
};

const responseOf = (
  food: ProbeAnalysis,
  bath: ProbeAnalysis,
  room: Parameters<typeof fitContainerResponse>[0]["room"],
) => {
  const { hold } = food.night;
  if (hold === null) return null;
  return fitContainerResponse({
    food: food.series,
    bath: bath.series,
    hold,
    from: heatingStart(food, bath),
    disturbances: [...food.phases, ...bath.phases].filter(({ kind }) => kind === "disturbance"),
    room,
    thermometers: {
      food: food.thermometer.standardUncertainty,
      bath: bath.thermometer.standardUncertainty,
    },
  });
};

/** Where the bath, or else the food, begins to warm up; else where both probes have begun. */
const heatingStart = (food: ProbeAnalysis, bath: ProbeAnalysis): number => {
  const warmUps = [bath, food].map(({ phases }) => phases.find(({ kind }) => kind === "warm-up"));
  const begun = Math.max(food.series.minutes[0] ?? 0, bath.series.minutes[0] ?? 0);
  return warmUps.find((phase) => phase !== undefined)?.fromMinute ?? begun;
};
