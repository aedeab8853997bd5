import { addObstacle, KIND_NAMES, wallLength } from "@baywright/editor";
import { type Obstacle, wallName } from "@baywright/setout";
import { useEffect, useRef, useState } from "react";
import { Button } from "react-aria-components";
import { useBay } from "../desk/on-table.ts";
import { Pick } from "../fields/pick.tsx";
import { OBSTACLE_KINDS } from "../panels/obstacle-kinds.ts";
import { WallPick } from "../panels/wall-pick.tsx";
import { HeightSketch } from "./height-sketch.tsx";
import { IN_THE_WAY } from "./how-to-take.ts";
import type { ToTake } from "./next-to-take.ts";
import { Standing } from "./standing.tsx";
import { takeAlong } from "./take-along.ts";
import { leave, putOnWall } from "./taking.ts";

interface Props {
	readonly item: ToTake;
	readonly list: readonly ToTake[];
	readonly back: (() => void) | null;
}

/** Whether anything else is on the walls: put there, its measures are asked next. */
export function MoreOnWalls({ item, list, back }: Props) {
	const walls = useBay((bay) => bay.walls.length);
	const count = useBay((bay) => bay.obstacles.length);
	const [kind, setKind] = useState<Obstacle["kind"]>("pipe");
	const [chosen, setWall] = useState(Math.floor((walls - 1) / 2));
	const [refused, setRefused] = useState("");
	const wall = Math.min(chosen, walls - 1);
	const heading = useRef<HTMLHeadingElement>(null);
	useEffect(() => takeAlong(heading.current), []);
	function put(): void {
		const done = putOnWall(`add a ${KIND_NAMES[kind]}`, (bay) =>
			addObstacle(bay, kind, wall, wallLength(bay, wall) / 2),
		);
		setRefused(done ? "" : `No room for it on the ${wallName(wall, walls)}.`);
	}
	return (
		<div className="taking-question">
			<div className="taking-how">
				<h2 ref={heading} tabIndex={-1}>
					{count === 0 ? "Is anything on the walls?" : "Is anything else on the walls?"}
				</h2>
				<p>{IN_THE_WAY}</p>
				<HeightSketch of={null} text="" label="The walls from the room, with what is on them" />
				<Standing list={list} asked={item} />
			</div>
			<div className="taking-answer">
				<div className="taking-more">
					<Pick label="What" value={kind} options={OBSTACLE_KINDS} choose={setKind} />
					<WallPick wall={wall} choose={setWall} />
					<Button className="button" onPress={put}>
						Tape it
					</Button>
				</div>
				{refused === "" ? null : (
					<p className="field-error" role="alert">
						{refused}
					</p>
				)}
				<div className="taking-ways">
					<Button className="button" isDisabled={back === null} onPress={() => back?.()}>
						Back
					</Button>
					<Button className="button button-main" onPress={() => leave(item.key)}>
						{count === 0 ? "Nothing on the walls" : "Nothing else"}
					</Button>
				</div>
			</div>
		</div>
	);
}
