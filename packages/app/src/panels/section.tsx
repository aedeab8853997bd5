import type { ThingKind } from "@baywright/editor";
import type { ReactNode } from "react";
import { useEffect, useState } from "react";
import { Button, Disclosure, DisclosurePanel, Heading } from "react-aria-components";
import { useDesk } from "../desk/desk.ts";

interface Props {
	readonly title: string;
	/** A word or two that still says something when the section is folded away. */
	readonly gist?: ReactNode;
	readonly open?: boolean;
	readonly id?: string;
	/** Things whose rows stand here: choosing one unfolds the section. */
	readonly holds?: readonly ThingKind[];
	readonly children: ReactNode;
}

/** One part of the side column, hung on its spine like a bracket on a track. Folded away it costs a drag nothing. */
export function Section({ title, gist, open = true, id, holds = [], children }: Props) {
	const [expanded, setExpanded] = useState(open);
	const chosen = useDesk(({ selection }) => (selection !== null && holds.includes(selection.kind) ? selection : null));
	useEffect(() => {
		if (chosen !== null) setExpanded(true);
	}, [chosen]);
	return (
		<Disclosure
			className="section"
			isExpanded={expanded}
			onExpandedChange={setExpanded}
			{...(id === undefined ? {} : { id })}
		>
			<Heading level={2} className="section-heading">
				<Button slot="trigger" className="section-trigger">
					<span className="section-title">{title}</span>
					<span className="section-gist">{gist}</span>
				</Button>
			</Heading>
			<DisclosurePanel className="section-panel">
				{expanded ? <div className="section-body">{children}</div> : null}
			</DisclosurePanel>
		</Disclosure>
	);
}
