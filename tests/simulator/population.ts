/**
 * The population of simulated overnight water tests.
 *
 * Appliances: cookers with the thermostat on the jacket (25 %), plain baths
 * with it in the water (22 %), circulating baths under proportional-integral
 * control (16 %), warming boxes with it in the air (22 %), unthermostatted
 * warmers (15 %). Dial error: standard deviation 1 degC. Targets 26..45 degC.
 * Water 1..12 L in baths, jars of 0.2..1.5 L in 60 % of the baths and in every
 * box. Bath thermostats are drawn to cycle in 5..90 min and 0.1..2.5 degC
 * either way; measured over 178 plain baths: periods 11..126 min, peak to peak
 * 0.3..8.5 degC in the bath and 0.02..7.3 in the food, of which tests over
 * 5 degC in the food are drawn again. One cooker, plain bath or warming box in
 * eight has a program that switches itself off.
 *
 * Structure: "lumped" (65 %) has jars of one body; "layered" (35 %) has jars
 * of two bodies, cookers with the sensor in the water, and a night setback of
 * the heating in 60 % of the rooms (15 % in lumped ones).
 *
 * Rooms: base 17..25 degC, falling 0.5..4 degC by night, slow wander. Switched
 * on between 17:00 and 23:30 in 85 % of tests, at any hour otherwise. Tests
 * last 7..14 h (70 %), 3..7 h (12 %) or 14..30 h (18 %). Logger started
 * 5..90 min before switch-on (15 %) or 10..50 min after it (4 %). Lid lifted
 * (13 %; half of these with the probe out), power cut (12 %), probe pulled out
 * before the end (13 %); who reads by hand reads with the probe in place.
 *
 * Loggers: error within their stated accuracy of 0.1..1 degC (75 %), or a
 * correction with its standard uncertainty (25 %); lag 5..300 s, noise
 * 0..0.15 degC, resolution 0.01..0.5 degC, intervals 1 s..10 min; 8 % are six
 * to twelve looks by hand. Lost rows (12 %), a gap (5 %), one to five glitches
 * of 3..20 degC (12 %, at most one and a fiftieth of the readings), one to six
 * fault codes (10 %). A second probe in the bath (10 %) or the room (10 %).
 *
 * Requirements: window 2..6 degC wide, its middle normal about the tested
 * hold's mean with half the width as standard deviation, edges to 0.5 degC;
 * 8..48 h; a ceiling 0..3 degC above the window in 35 %. The room's range over
 * the culture's hours is stated, rounded outwards, in half of the cases.
 *
 * Verdict truth: the same run, continued undisturbed for the culture's hours
 * from the true hold start, in the same room going on through day and night; a
 * program that switches itself off does so and the food cools.
 */
import { observed } from "./observe.ts";
import type { SimulatedCase } from "./case-types.ts";
import { isPlausible, sampleWorld, type CaseChoice } from "./world.ts";

export type { SimulatedCase } from "./case-types.ts";

/** One simulated test; the same seed always gives the same case. */
export function sampleCase(seed: number, choice: CaseChoice = {}): SimulatedCase {
  for (let attempt = 0; ; attempt += 1) {
    const world = sampleWorld(seed, attempt, choice);
    if (isPlausible(world)) return observed(seed, world);
  }
}
