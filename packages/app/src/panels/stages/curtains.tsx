import { useBay } from "../../desk/on-table.ts";
import { CurtainsPanel } from "../curtains-panel.tsx";
import { DrawPanel } from "../draw-panel.tsx";
import { GlassPanel } from "../glass-panel.tsx";
import { LoadsPanel } from "../loads-panel.tsx";

/** What hangs on the track. Until the curtains are made up that comes first; then it is long, and what one looks at stands before it. */
export function CurtainsStage() {
	const isMadeUp = useBay((bay) => bay.curtains.length > 0);
	const curtains = <CurtainsPanel key="curtains" />;
	const seen = [<DrawPanel key="draw" />, <GlassPanel key="glass" />];
	return (
		<>
			{isMadeUp ? [...seen, curtains] : [curtains, ...seen]}
			<LoadsPanel />
		</>
	);
}
