import type { Finding, Remedy } from "../finding/finding.ts";
import type { TrackSystem } from "../library/system.ts";
import { setProjection, setWallProjection } from "./remedies.ts";
import { nearestCure, otherSystems, type Refused } from "./search-remedies.ts";
import { endedBeforeStretch } from "./shorter-track.ts";

/** Past an obstacle: with more projection, as much as the largest that stands in the way asks for, on a system that has it, or the track ended before it. */
export function obstacleRemedies(finding: Finding, refused: Refused): Remedy[] {
	const further = furtherOff(finding, refused);
	const needed = ({ clearance }: TrackSystem) => Math.ceil(Number(finding.figures.depth) + clearance);
	const beyond = further.length > 0 ? [] : otherSystems(refused, finding, needed);
	return [...further, ...beyond, ...endedBefore(finding, refused)];
}

/** On the obstacle's wall where that has a projection of its own; else the whole track, and where that does not do, the wall after all. */
function furtherOff(finding: Finding, refused: Refused): Remedy[] {
	const { bay, system, findings } = refused;
	const wall = finding.where.wall as number;
	const isOwn = (one: number) => (bay.walls[one]?.projection ?? null) !== null;
	const needOn = (walls: (wall: number) => boolean) =>
		findings
			.filter(({ code, where }) => code === finding.code && walls(where.wall as number))
			.reduce((most, { figures }) => Math.max(most, Math.ceil(Number(figures.depth) + system.clearance)), 0);
	const { max } = system.projection;
	const onWall = needOn((one) => one === wall);
	if (!isOwn(wall)) {
		const all = needOn((one) => !isOwn(one));
		const remedies = nearestCure(refused, finding, setProjection, all, [all, max]);
		if (remedies.length > 0) return remedies;
	}
	return nearestCure(refused, finding, (one) => setWallProjection(wall, one), onWall, [onWall, max]);
}

function endedBefore(finding: Finding, refused: Refused): Remedy[] {
	const { bay, system } = refused;
	const obstacle = bay.obstacles[finding.where.obstacle as number];
	if (obstacle === undefined) return [];
	const { wall, from, to } = obstacle;
	return endedBeforeStretch(refused, finding, {
		from: { wall, at: from - system.clearance },
		to: { wall, at: to + system.clearance },
	});
}
