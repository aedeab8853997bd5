import { capital, wallName } from "@baywright/setout";
import { useBay } from "../desk/on-table.ts";
import { Pick } from "../fields/pick.tsx";

interface Props {
	readonly wall: number;
	readonly choose: (wall: number) => void;
}

/** The wall that something stands on. */
export function WallPick({ wall, choose }: Props) {
	const walls = useBay((bay) => bay.walls.length);
	const options = Array.from({ length: walls }, (_, i) => [String(i), capital(wallName(i, walls))] as const);
	return <Pick label="Wall" value={String(wall)} options={options} choose={(chosen) => choose(Number(chosen))} />;
}
