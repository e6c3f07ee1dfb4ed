/** Points nearer than this are one point: a tenth of a scribed line. [mm] */
export const SAME_POINT_MM = 0.01;

/** No point of an outline may lie further than this from the exact development. [mm] */
export const OUTLINE_MM = 0.01;

/** Extrapolated chords of a 32nd of a turn lose less than this share of an end; more means that a bend was stepped over. [-] */
export const RIM_REL = 1e-6;

/** Normal angles nearer than this are one angle: at a 10 m rim it is 0.00001 mm of edge. [rad] */
export const SAME_ANGLE = 1e-9;

/** Lengths shorter than this are nothing at all, only rounding of larger ones. [mm] */
export const NO_LENGTH_MM = 1e-9;

/** Adaptive quadrature stops where halving a panel changes the integral by less than this share. [-] */
export const QUADRATURE_REL = 1e-12;

/** Root finding stops where the bracket is this share of the quantity's size. [-] */
export const ROOT_REL = 1e-14;

/** A value this little beyond its limit is at its limit: sizes converted from inches differ in their last digits. [-] */
export const AT_LIMIT_REL = 1e-9;

/** Where plates are laid out, corners lie on a grid of this: finer than any torch follows, coarse enough for exact whole numbers. [mm] */
export const LAY_GRID_MM = 0.001;

/** Where plates are laid out, lines nearer than this meet: a twentieth of the grid, far above rounding. [mm] */
export const LAY_MEET_MM = 0.00005;

/** A blank laid this little nearer than the spacing touches it only: the grid and the turning of outlines together. [mm] */
export const LAY_TOUCH_MM = 0.004;

/** For laying, arcs become straight sides outside the blank by no more than this, far below any kerf's waste. [mm] */
export const ENCLOSE_MM = 1;

/** Room all round a blank for how far its cut contour and its drawn outline may lie from each other, and the grid. [mm] */
export const ENCLOSE_GUARD_MM = 0.02;

/** Radii alike to this share are those of a skin that is the same on both sides. [-] */
export const SAME_RADIUS_REL = 1e-6;

/** Less than this an arc that is drawn does not turn. [rad] */
export const NO_TURN = 1e-6;
