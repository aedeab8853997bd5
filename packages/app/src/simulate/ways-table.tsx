import type { StrategyName, StrategyResult } from "@baywright/setout";
import { useId } from "react";

/** Ways of measuring a bay, in plain words. */
export const WAYS: Readonly<Record<StrategyName, string>> = {
	asked: "The readings asked for",
	once: "Every run and diagonal, once",
	twice: "Every run and diagonal, twice",
	bevel: "Runs, and a bevel at each corner",
	"right-angle": "Runs, and the right-angle rule",
	"as-taped": "The readings in the job",
};

interface Props {
	readonly strategies: readonly StrategyResult[];
	readonly chosen: StrategyName;
	readonly choose: (way: StrategyName) => void;
}

/** The ways of measuring side by side; the one chosen is drawn below. */
export function WaysTable({ strategies, chosen, choose }: Props) {
	const group = useId();
	return (
		<table className="ways">
			<caption className="hidden">First fit by way of measuring</caption>
			<thead>
				<tr>
					<th scope="col">Measured by</th>
					<th scope="col">Readings</th>
					<th scope="col">Fits first time</th>
					<th scope="col">Half within</th>
					<th scope="col">95 % within</th>
				</tr>
			</thead>
			<tbody>
				{strategies.map(({ name, readings, firstFit, median, within95 }) => (
					<tr key={name} className={name === chosen ? "chosen" : undefined}>
						<th scope="row">
							<label className="way">
								<input type="radio" name={group} checked={name === chosen} onChange={() => choose(name)} />
								{WAYS[name]}
							</label>
						</th>
						<td>{readings.mean.toFixed(1)}</td>
						<td className="ways-rate">{(100 * firstFit).toFixed(1)} %</td>
						<td>{millimetres(median)}</td>
						<td>{millimetres(within95)}</td>
					</tr>
				))}
			</tbody>
		</table>
	);
}

const millimetres = (mm: number | null): string => (mm === null ? "no track" : `${mm.toFixed(1)} mm`);
