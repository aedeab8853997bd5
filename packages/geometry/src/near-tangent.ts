import { type Radians, wrapHeading } from "./angle.ts";
import type { WallChain, WallFace } from "./chain.ts";
import type { Feet } from "./elbow.ts";
import { headingOfFace, pointOffFace } from "./face.ts";

/** Halvings of the stretch in which the foot lies: as far as figures go. How near (share) the radius must then be. */
const HALVINGS = 110;
const NEAR_ENOUGH = 1e-9;

/**
 * The bend at a corner beside a bowed wall where the two faces are all but tangent and the track is as far off both. Two all but touching
 * curves meet nowhere in particular, so the bend is found the other way round: for a foot on the left leg there is one circle tangent to
 * both legs, and the foot is moved until that circle has the radius asked for. All of it is reckoned from the corner, where every figure is
 * small and keeps its digits. Null where no foot on the wall does.
 */
export function nearTangentFeet(chain: WallChain, corner: number, projection: number, radius: number): Feet | null {
	const place = localCorner(chain, corner, projection);
	const { faceLength } = chain.walls[corner - 1] as WallFace;
	const whole = { left: faceLength, right: 0, turn: chain.turns[corner] as Radians };
	if (radius === 0) return { ...whole, centre: pointOffFace(chain, corner, 0, projection) };
	// From a bend of no radius outwards it widens; where the legs curve away it is soon as wide as it can be, and then turns the other way.
	const tooFar = (back: number) => {
		const got = tangentTo(place, back).radius;
		return !(got >= 0) || got > radius;
	};
	let near = (place.side * projection * Math.abs(place.turn)) / 2;
	let far = near + Math.max(radius, 1) * Math.abs(place.turn);
	while (!tooFar(far)) {
		far = near + 2 * (far - near);
		if (far > faceLength / 2) return null;
	}
	for (let i = 0; i < HALVINGS; i++) {
		const middle = (near + far) / 2;
		if (tooFar(middle)) far = middle;
		else near = middle;
	}
	const got = tangentTo(place, near);
	if (!(Math.abs(got.radius - radius) <= NEAR_ENOUGH * radius)) return null;
	const left = faceLength - near / place.left.stretch;
	const right = got.on / place.right.stretch;
	const turn = wrapHeading(headingOfFace(chain, corner - 1, left) - headingOfFace(chain, corner, right));
	return { left, right, turn, centre: pointOffFace(chain, corner - 1, left, projection + place.side * radius) };
}

/** A corner seen from itself: the left leg comes in along x. Curvatures 1/mm, right positive; stretch = mm of track a mm of face. */
interface LocalCorner {
	readonly turn: number;
	readonly side: number;
	readonly projection: number;
	readonly left: { readonly curve: number; readonly stretch: number };
	readonly right: { readonly curve: number; readonly stretch: number };
}

function localCorner({ walls, turns }: WallChain, corner: number, projection: number): LocalCorner {
	const leg = ({ bow }: WallFace) => {
		if (bow === null) return { curve: 0, stretch: 1 };
		const own = Math.sign(bow.turn);
		const reach = bow.radius - own * projection;
		return { curve: own / reach, stretch: reach / bow.radius };
	};
	const turn = turns[corner] as number;
	const left = leg(walls[corner - 1] as WallFace);
	return { turn, side: turn < 0 ? -1 : 1, projection, left, right: leg(walls[corner] as WallFace) };
}

/**
 * The circle that leaves the left leg `back` mm of track before the corner and comes onto the right leg: its radius, and how far along
 * the right leg. With w from the right leg's start to the foot, n the normals there and κ the right leg's curvature,
 * R = (2 w·n − κ|w|²) / 2·side·(1 − cos Δ + κ m·w) for the turn Δ between the two headings and the normal m at the foot.
 */
function tangentTo({ turn, side, projection, left, right }: LocalCorner, back: number) {
	const lean = left.curve * back;
	const sagged = left.curve === 0 ? 0 : (2 * Math.sin(lean / 2) ** 2) / left.curve;
	const along = left.curve === 0 ? back : Math.sin(lean) / left.curve;
	// From the start of the right leg, which lies off its own wall's normal at the corner.
	const wx = -along + projection * Math.sin(turn);
	const wy = -sagged - projection * 2 * Math.sin(turn / 2) ** 2;
	const nx = -Math.sin(turn);
	const ny = -Math.cos(turn);
	const mx = Math.sin(lean);
	const my = -Math.cos(lean);
	const swung = turn + lean;
	const facing = 2 * Math.sin(swung / 2) ** 2;
	const kappa = right.curve;
	const top = 2 * (wx * nx + wy * ny) - kappa * (wx * wx + wy * wy);
	const radius = top / (2 * side * (facing + kappa * (mx * wx + my * wy)));
	// Seen from the centre of the right leg, scaled by its curvature, how far round the circle's centre lies.
	const cx = wx + side * radius * mx;
	const cy = wy + side * radius * my;
	const forward = cx * -ny + cy * nx;
	const inward = cx * nx + cy * ny;
	const on = kappa === 0 ? forward : Math.atan2(kappa * forward, 1 - kappa * inward) / kappa;
	return { radius, on };
}
