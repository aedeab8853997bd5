import type { CurtainSetOut } from "@baywright/setout";
import { useLength, usePlan } from "../desk/on-table.ts";

/** Size of the drawing and of the wall in it, px of its own; the length of track that it shows, mm. */
const WIDTH = 270;
const HEIGHT = 64;
const WALL = 9;
const LONG = 800;

/** Half the distance between the two lines of the track, px. */
const TRACK = 2;

/** A piece of wall and track from above, with how far the drawn folds reach behind and before it, in one scale. */
export function BehindDrawing({ curtain }: { readonly curtain: CurtainSetOut }) {
	const show = useLength();
	const off = usePlan(({ projections }) => Math.min(...projections));
	const { foldDepth, behind, gliders, from, to } = curtain;
	if (foldDepth <= 0 || gliders < 2 || !Number.isFinite(off)) return null;
	const before = foldDepth - behind;
	const scale = Math.min(WIDTH / LONG, (HEIGHT - WALL) / (off + before + 8));
	const y = (mm: number) => WALL + mm * scale;
	const pitch = ((to - from) / (gliders - 1)) * scale;
	const touches = behind > off;
	return (
		<figure className="behind">
			<svg
				viewBox={`0 0 ${WIDTH} ${HEIGHT}`}
				role="img"
				aria-label="From above: the wall, the track, and the drawn folds"
			>
				<rect className="behind-wall" x="0" y="0" width={WIDTH} height={WALL} />
				<path className="behind-track" d={`M 0 ${y(off) - TRACK} H ${WIDTH} M 0 ${y(off) + TRACK} H ${WIDTH}`} />
				<path
					className={touches ? "behind-folds touches" : "behind-folds"}
					d={wave(pitch, y(off - behind), y(off + before))}
				/>
			</svg>
			<figcaption className="quiet">
				Folds {show(foldDepth)} deep when drawn, {show(behind)} of it behind the track, which is {show(off)} off the
				wall{touches ? `: they touch it; ${show(Math.ceil(behind))} clears` : ""}.
			</figcaption>
		</figure>
	);
}

/** Folds between two lines, one back and forth for every two hooks. */
function wave(pitch: number, back: number, front: number): string {
	const turns = Array.from({ length: Math.ceil(WIDTH / pitch) + 1 }, (_, i) => {
		const [from, to] = i % 2 === 0 ? [back, front] : [front, back];
		const left = i * pitch;
		return `C ${left + pitch * 0.6} ${from}, ${left + pitch * 0.4} ${to}, ${left + pitch} ${to}`;
	});
	return `M 0 ${back} ${turns.join(" ")}`;
}
