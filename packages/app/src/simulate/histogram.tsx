import { FITS_WITHIN } from "@baywright/setout";
import { useId } from "react";
import { type Bar, barsOf, scaleTop } from "./histogram-bars.ts";

// Units of the drawing's own.
const [WIDTH, HEIGHT] = [420, 190];
const [LEFT, TOP, RIGHT, BOTTOM] = [38, 26, 414, 150];

interface Props {
	readonly histogram: readonly number[];
	/** How the bays were measured, for who cannot see the drawing. */
	readonly way: string;
}

/** How far out the worst piece of each bay was, by the millimetre: what fits in solid bars on the hatched band. */
export function Histogram({ histogram, way }: Props) {
	const id = useId();
	const bars = barsOf(histogram);
	const top = scaleTop(bars);
	const pitch = (RIGHT - LEFT) / bars.length;
	const across = (mm: number) => LEFT + mm * pitch;
	const up = (share: number) => BOTTOM - (share / top) * (BOTTOM - TOP);
	return (
		<>
			<svg className="histogram" viewBox={`0 0 ${WIDTH} ${HEIGHT}`} aria-hidden="true">
				<defs>
					<pattern id={`${id}-band`} width="7" height="7" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
						<path className="histogram-hatch" d="M0 0V7" />
					</pattern>
					<pattern id={`${id}-out`} width="3" height="3" patternUnits="userSpaceOnUse">
						<path className="histogram-out" d="M0 1.5H3" />
					</pattern>
				</defs>
				<rect className="histogram-band" x={LEFT} y={TOP} width={across(FITS_WITHIN) - LEFT} height={BOTTOM - TOP} />
				<rect x={LEFT} y={TOP} width={across(FITS_WITHIN) - LEFT} height={BOTTOM - TOP} fill={`url(#${id}-band)`} />
				{[0, 0.5, 1].map((part) => (
					<g key={part}>
						<path className="histogram-line" d={`M${LEFT} ${up(part * top)}H${RIGHT}`} />
						<text x={LEFT - 4} y={up(part * top)} textAnchor="end" dominantBaseline="middle">
							{Math.round(100 * part * top)} %
						</text>
					</g>
				))}
				{bars.map(({ from, share, fits }) => (
					<rect
						key={from}
						className={fits ? "histogram-bar" : "histogram-bar-out"}
						x={across(from) + 1.5}
						y={up(share)}
						width={pitch - 3}
						height={BOTTOM - up(share)}
						{...(fits ? {} : { fill: `url(#${id}-out)` })}
					/>
				))}
				<path className="histogram-axis" d={`M${LEFT} ${BOTTOM}H${RIGHT}`} />
				<path className="histogram-edge" d={`M${across(FITS_WITHIN)} ${TOP - 16}V${BOTTOM}`} />
				<text x={across(FITS_WITHIN) - 4} y={TOP - 7} textAnchor="end">
					fits
				</text>
				{[0, 5, 10, 15].map((mm) => (
					<text key={mm} x={across(mm)} y={BOTTOM + 14} textAnchor="middle">
						{mm}
					</text>
				))}
				<text x={RIGHT} y={BOTTOM + 14} textAnchor="end">
					more
				</text>
				<text x={(LEFT + RIGHT) / 2} y={HEIGHT - 6} textAnchor="middle">
					out by, mm
				</text>
			</svg>
			<table className="hidden">
				<caption>How far out the worst piece was: {way}</caption>
				<thead>
					<tr>
						<th scope="col">Out by</th>
						<th scope="col">Bays</th>
					</tr>
				</thead>
				<tbody>
					{bars
						.filter(({ bays }) => bays > 0)
						.map((bar) => (
							<tr key={bar.from}>
								<th scope="row">{outBy(bar)}</th>
								<td>{bar.bays}</td>
							</tr>
						))}
				</tbody>
			</table>
		</>
	);
}

const outBy = ({ from, to }: Bar): string => (to === null ? `${from} mm or more` : `${from} to ${to} mm`);
