/** Segments shorter than this (mm) are dropped from a path: nothing can be cut or taped to it. */
export const SHORTEST_SEGMENT = 1e-6;

/** Greatest gap (mm) between the end of one segment and the start of the next in a proved path. */
export const JOIN_POSITION = 1e-6;

/** Greatest kink (rad) between two segments of a proved path. */
export const JOIN_HEADING = 1e-9;

/** Slack (mm) when a length is compared with a limit: far below any tape, far above rounding. */
export const LENGTH_SLACK = 1e-7;

/**
 * Radii and lengths this close (mm) are as good as one another where one line is chosen among several: above the rounding in what a
 * corridor allows, so that of two mirror images the choice stays the same while a wall is dragged.
 */
export const AS_GOOD = 0.01;

/** Turns smaller than this (rad) are no corner at all. */
export const NO_TURN = 1e-9;

/** Turns smaller than this (rad) need no made bend: the track springs round them (3°). */
export const SLIGHT_TURN = (3 * Math.PI) / 180;

/** Greatest radius (mm) given to a sprung turn; wider is not told from straight. */
export const SPRUNG_RADIUS = 5000;

/** Walls shorter than this (mm) are refused: shorter than a tape can read. */
export const SHORTEST_WALL = 1;

/** Room angles this close (rad) to a fold, either way, are refused (20°). */
export const FOLD = (20 * Math.PI) / 180;

/** Greatest coordinate (mm) taken: 100 m. */
export const GREATEST_COORDINATE = 100_000;

/** Stretches of path closer together than this along the path (mm) are joined, not crossing: no loop is so short. */
export const LOOP = 1;

/** A wall that bows by no more than this (mm) is straight: a tape cannot tell, and the arc would be too flat to reckon with. */
export const NO_RISE = 0.5;

/** Turns beside a bow under this (rad, 0.06°) are reckoned close to the corner, and their bends are not widened: nobody sees them. */
export const NEARLY_TANGENT = 1e-3;
