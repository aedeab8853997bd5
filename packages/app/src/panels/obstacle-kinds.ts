import { KIND_NAMES } from "@baywright/editor";
import { capital, type Obstacle } from "@baywright/setout";

/** Kinds of obstacle to pick from. */
export const OBSTACLE_KINDS = (Object.keys(KIND_NAMES) as Obstacle["kind"][]).map(
	(kind) => [kind, capital(KIND_NAMES[kind])] as const,
);
