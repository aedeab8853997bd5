import type { z } from "zod";
import { type Cloth, clothSchema } from "./cloth.ts";

/** Linings to begin with: a plain one, one that keeps the light out, and an interlining sewn in with a plain one. */
const PLAIN_LINING = { name: "Plain cotton lining", width: 1370, mass: 130, thickness: 0.3 };
const DIMOUT_LINING = { name: "Dim-out lining", width: 1370, mass: 260, thickness: 0.5 };
const INTERLINING = { name: "Interlining and plain lining", width: 1370, mass: 430, thickness: 2.6 };

/**
 * Generic cloths to begin with, invented and named by what they are. Every figure is editable; the label on the roll decides. Masses and
 * thicknesses are what cloths of each kind weigh and measure (common practice, no source).
 */
const figures: readonly z.input<typeof clothSchema>[] = [
	{
		id: "sheer-voile",
		name: "Sheer voile",
		width: 3000,
		mass: 60,
		thickness: 0.2,
		packing: { pencil: 55, pinch: 60, goblet: 70, box: 65, wave: 45 },
	},
	{ id: "light-cotton", name: "Light cotton, unlined", width: 1370, mass: 140, thickness: 0.35 },
	{ id: "medium-cotton", name: "Medium cotton, lined", width: 1370, mass: 230, thickness: 0.5, lining: PLAIN_LINING },
	{
		id: "printed-cotton",
		name: "Printed cotton, lined",
		width: 1370,
		repeat: 640,
		mass: 220,
		thickness: 0.5,
		lining: PLAIN_LINING,
	},
	{
		id: "half-drop-weave",
		name: "Half-drop weave, lined",
		width: 1400,
		repeat: 480,
		match: "half-drop",
		mass: 310,
		thickness: 0.8,
		lining: PLAIN_LINING,
	},
	{ id: "heavy-linen", name: "Heavy linen, dim-out", width: 1400, mass: 380, thickness: 0.9, lining: DIMOUT_LINING },
	{
		id: "heavy-interlined",
		name: "Heavy velvet, interlined",
		width: 1400,
		mass: 420,
		thickness: 1.6,
		lining: INTERLINING,
	},
];

export const builtInCloths: readonly Cloth[] = figures.map((cloth) => clothSchema.parse(cloth));
