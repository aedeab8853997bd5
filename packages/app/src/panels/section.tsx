import type { ReactNode } from "react";
import { useState } from "react";
import { Button, Disclosure, DisclosurePanel, Heading } from "react-aria-components";

interface Props {
	readonly title: string;
	/** A word or two that still says something when the section is folded away. */
	readonly gist?: ReactNode;
	readonly open?: boolean;
	readonly id?: string;
	readonly children: ReactNode;
}

/** One part of the side column, hung on its spine like a bracket on a track. Folded away it costs a drag nothing. */
export function Section({ title, gist, open = true, id, children }: Props) {
	const [expanded, setExpanded] = useState(open);
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
