import { createDesk, type Desk, plainJob } from "@baywright/editor";
import { useStore } from "zustand";

/** What lies on the desk. */
export const desk = createDesk(plainJob());

/** Subscribes a component to the little that it shows. */
export function useDesk<Part>(select: (desk: Desk) => Part): Part {
	return useStore(desk, select);
}
