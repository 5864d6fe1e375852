/**
 * A lumped thermal network: bodies of uniform temperature (heater or jacket,
 * bath, jar, ...) joined by conductances and losing heat to the room.
 *
 *   C_i dT_i/dt = P_i + sum_j G_ij (T_j - T_i) + L_i (T_room - T_i) - E_i
 *
 * E is evaporation from the free water surface. Integrated with classical
 * fourth-order Runge-Kutta; the step must stay well below the smallest C/G.
 */
export interface Link {
  readonly from: number;
  readonly to: number;
  /** W/K. */
  readonly conductance: number;
}

/** Water open to the air, more so when the lid is off. */
export interface Surface {
  readonly node: number;
  /** m2. */
  readonly area: number;
  /** Convective coefficient of the still air above, W/(m2 K). */
  readonly coefficient: number;
  /** Share of the open surface's exchange that passes a closed lid, 0 to 1. */
  readonly leak: number;
}

export interface Network {
  /** Heat capacities, J/K. */
  readonly capacities: readonly number[];
  readonly links: readonly Link[];
  /** Conductance from each body to the room with the lid on, W/K. */
  readonly losses: readonly number[];
  /** Conductance added to each body while the lid is off, W/K. */
  readonly openLosses: readonly number[];
  readonly surface: Surface | null;
  /** The body that the heater warms. */
  readonly heated: number;
}

export interface Conditions {
  readonly power: number;
  readonly room: number;
  readonly lidOpen: boolean;
}

/** Heat capacity of water, J/K per litre at about 35 degC (4178 J/(kg K), 0.994 kg/L). */
export const waterCapacityPerLitre = 4153;

/** Lewis relation for water into air: latent over sensible exchange, K/kPa (heat transfer textbooks; about 15 to 17). */
const latentToSensible = 16;

/** Saturation vapour pressure of water, kPa (Magnus form, coefficients of Alduchov and Eskridge 1996). */
export const vapourPressure = (celsius: number): number =>
  0.61094 * Math.exp((17.625 * celsius) / (celsius + 243.04));

/** Heat leaving the free surface by evaporation, W; the room's air is taken as half saturated. */
function evaporation(surface: Surface, water: number, conditions: Conditions): number {
  const drive = Math.max(0, vapourPressure(water) - 0.5 * vapourPressure(conditions.room));
  const share = conditions.lidOpen ? 1 : surface.leak;
  return share * surface.area * surface.coefficient * latentToSensible * drive;
}

/** Sets `rates` to dT/dt of every body, K/s. */
export function heatRates(
  network: Network,
  state: Float64Array,
  conditions: Conditions,
  rates: Float64Array,
): void {
  for (let node = 0; node < state.length; node += 1) {
    const open = conditions.lidOpen ? network.openLosses[node]! : 0;
    rates[node] = (network.losses[node]! + open) * (conditions.room - state[node]!);
  }
  rates[network.heated]! += conditions.power;
  for (const { from, to, conductance } of network.links) {
    const flow = conductance * (state[from]! - state[to]!);
    rates[from]! -= flow;
    rates[to]! += flow;
  }
  const { surface } = network;
  if (surface !== null)
    rates[surface.node]! -= evaporation(surface, state[surface.node]!, conditions);
  for (let node = 0; node < state.length; node += 1) rates[node]! /= network.capacities[node]!;
}

/** A function that advances the temperatures in place by one Runge-Kutta step. */
export function createStepper(
  network: Network,
): (state: Float64Array, conditions: Conditions, seconds: number) => void {
  const size = network.capacities.length;
  const trial = new Float64Array(size);
  const slopes = [0, 1, 2, 3].map(() => new Float64Array(size)) as [
    Float64Array,
    Float64Array,
    Float64Array,
    Float64Array,
  ];
  const [first, second, third, fourth] = slopes;
  return (state, conditions, seconds) => {
    const towards = (slope: Float64Array, share: number): Float64Array => {
      for (let node = 0; node < size; node += 1)
        trial[node] = state[node]! + share * seconds * slope[node]!;
      return trial;
    };
    heatRates(network, state, conditions, first);
    heatRates(network, towards(first, 0.5), conditions, second);
    heatRates(network, towards(second, 0.5), conditions, third);
    heatRates(network, towards(third, 1), conditions, fourth);
    for (let node = 0; node < size; node += 1) {
      const sum = first[node]! + 2 * second[node]! + 2 * third[node]! + fourth[node]!;
      state[node]! += (seconds / 6) * sum;
    }
  };
}

/** Follows `input` with time constant `lag` (seconds) over one step; exact for a constant input. */
export const lagged = (value: number, input: number, lag: number, seconds: number): number =>
  lag <= 0 ? input : input + (value - input) * Math.exp(-seconds / lag);
