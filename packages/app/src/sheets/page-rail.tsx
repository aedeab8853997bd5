import { useEffect, useRef } from "react";
import { useDesk } from "../desk/desk.ts";
import { pageKey } from "./maker.ts";
import { SHEET_WORDS } from "./making.ts";
import { PageImage } from "./page-image.tsx";
import { type PackPage, shown } from "./shown.ts";

interface Props {
	readonly pages: readonly PackPage[];
	/** Place of the page at hand. */
	readonly current: number;
}

/** All pages of the pack, small, sheet after sheet. */
export function PageRail({ pages, current }: Props) {
	const rail = useRef<HTMLElement>(null);
	useEffect(() => {
		rail.current?.querySelectorAll(".page-small")[current]?.scrollIntoView({ block: "nearest" });
	}, [current]);
	const sheets = [...new Set(pages.map(({ sheet }) => sheet))];
	const bays = new Set(pages.map(({ of }) => of.bay));
	return (
		<nav ref={rail} className="page-rail" aria-label="Pages of the pack">
			{sheets.map((sheet) => {
				const own = pages.flatMap((page, at) => (page.sheet === sheet ? [{ page, at }] : []));
				const of = own[0]?.page.of;
				if (of === undefined) return null;
				return (
					<section key={`${of.bay} ${of.name}`}>
						<h3>
							{SHEET_WORDS[of.name]}
							{bays.size > 1 ? <BayName id={of.bay} /> : null}
						</h3>
						{own.map(({ page, at }) => (
							<button
								key={pageKey(of, page.page)}
								type="button"
								className="page-small"
								aria-current={at === current ? "page" : undefined}
								onClick={() => shown.setState({ page: pageKey(of, page.page) })}
							>
								<PageImage page={page} alt="" />
								<span>{of.pages[page.page]?.label}</span>
							</button>
						))}
					</section>
				);
			})}
		</nav>
	);
}

/** The order of several bays is of none of them. */
function BayName({ id }: { readonly id: string }) {
	const name = useDesk(({ job }) => {
		const bay = job.bays.find((each) => each.id === id);
		return bay === undefined ? "all bays" : bay.name || `Bay ${id}`;
	});
	return <span className="page-bay">{name}</span>;
}
