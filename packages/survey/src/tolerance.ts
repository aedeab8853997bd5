/**
 * How much lighter a weak prior weighs while the network settles (a factor on its weight). Whatever is read outranks whatever is only
 * drawn: a drawn wall 300 mm out, on a tape good to 2 mm, moves the answer by less than 1e-5 mm. Where nothing is read, only the
 * priors' weights among themselves count, and those stay as they are.
 */
export const LETTING_GO = 1e-6;

/**
 * The same of a rise that is drawn and was not taped. An angle read beside a bow is between tangents, so rise and turn could each make way
 * for it; a bow that was drawn stays as it is, and the walls turn. Still far below whatever was read: a rise drawn 100 mm out, which angles
 * and lengths tell to 6 mm, moves the answer by less than 1e-3 mm.
 */
export const HOLDING_ON = 1e-3;

/** Least pivot of a normal matrix scaled to a diagonal of 1, below which something is undetermined: far above rounding, far below any survey. */
export const LEAST_PIVOT = 1e-12;

/** Share of an undetermined movement from which a point or parameter is named as taking part. */
export const TAKES_PART = 1e-4;

/** A network is at rest when no unknown moves by more than this many of its standard deviations, all other unknowns held. */
export const AT_REST = 1e-6;

/** Or when no unknown moves by more than this share of the network's extent: rounding. */
export const AT_REST_SHARE = 1e-13;

/** Points closer together than this share of the network's extent coincide: no direction leads from one to the other. */
export const COINCIDENT = 1e-12;

/** Rounds before a network is told as restless; ordinary bays take three to six. */
export const MOST_ROUNDS = 200;

/** Damping after the first step that made things worse, its factor from step to step, and where it is dropped. Unknowns are scaled to 1. */
export const FIRST_DAMPING = 1e-4;
export const DAMPING_FACTOR = 10;
export const LEAST_DAMPING = 1e-7;

/** Redundancy numbers under this are nought: nothing checks the reading. */
export const UNCHECKED = 1e-4;

/** A standardized residual above this marks a blunder: 0.1 % of good readings pass it (W. Baarda, A Testing Procedure for Use in Geodetic Networks, 1968). */
export const BLUNDER = 3.29;

/** Probability with which a network without blunders passes the global test. */
export const GLOBAL_TEST = 0.95;

/** Most suspicions told, and so most networks settled anew in search of them. */
export const MOST_SUSPICIONS = 6;

/** Two readings whose standardized residuals go together more closely than this (correlation) cannot be told apart. */
export const INSEPARABLE = 0.999;

/** Deviations closer than this (relative) are equal, where candidates are compared. */
export const SAME_DEVIATION = 1e-9;
