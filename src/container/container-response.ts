/** How the food follows its bath, from one test with a probe in each; degC and minutes. */
export interface ContainerResponse {
  /** Bath minus food over the hold they share, the thermometers' doubt included. */
  readonly offset: ResponseFigure;
  /**
   * phi: the part of the difference between bath and room that the food stands
   * below its bath. null where the room is not known.
   */
  readonly shareLost: ResponseFigure | null;
  /** tau: time constant with which the food follows the bath; null where the readings cannot tell. */
  readonly lagMinutes: ResponseFigure | null;
  /** Room temperature used for phi and where it is from. */
  readonly room: { readonly mean: number; readonly from: "measured" | "stated" } | null;
}

export interface ResponseFigure {
  readonly value: number;
  readonly standardUncertainty: number;
}
