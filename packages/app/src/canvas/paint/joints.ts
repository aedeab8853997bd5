import { toScreen } from "@baywright/editor";
import { pointAt } from "@baywright/geometry";
import type { Painter, Scene } from "../scene.ts";
import { halfTrack } from "../track-shape.ts";
import type { Pen } from "./pen.ts";

/** px that a joint's diamond reaches past the track across it; it is longer along it. */
const PAST_TRACK = 5;
const LONGER = 1.5;

/** Joints: a diamond on the track. */
export const paintJoints: Painter = (pen, scene) => {
	pen.fillStyle = scene.palette.sheet;
	pen.strokeStyle = scene.palette.cut;
	pen.lineWidth = 2;
	pen.lineJoin = "miter";
	pen.beginPath();
	scene.plan.joints.forEach((_, i) => {
		traceJoint(pen, scene, i, 0);
	});
	pen.fill();
	pen.stroke();
};

/** A joint's diamond, `larger` px larger all round. */
export function traceJoint(pen: Pen, { plan, view }: Scene, index: number, larger: number): void {
	const joint = plan.joints[index];
	const place = plan.path === null || !joint ? null : pointAt(plan.path, joint.station);
	if (place === null) return;
	const { left, top } = toScreen(view, place.at);
	const across = halfTrack(plan, view) + PAST_TRACK + larger;
	const along = across * LONGER;
	const cos = Math.cos(place.heading);
	const sin = Math.sin(place.heading);
	pen.moveTo(left + cos * along, top - sin * along);
	pen.lineTo(left + sin * across, top + cos * across);
	pen.lineTo(left - cos * along, top + sin * along);
	pen.lineTo(left - sin * across, top - cos * across);
	pen.closePath();
}
