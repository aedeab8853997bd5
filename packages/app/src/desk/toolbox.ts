import { createToolbox, type Toolbox } from "@baywright/editor";
import { useStore } from "zustand";
import { desk } from "./desk.ts";

/** The tools that work on the desk. */
export const toolbox = createToolbox(desk);

/** Subscribes a component to the little that it shows. */
export function useToolbox<Part>(select: (toolbox: Toolbox) => Part): Part {
	return useStore(toolbox, select);
}
