import { useEffect, useRef, useState } from "react";
import { drawPage, pageKey, useMaker } from "./maker.ts";
import type { PackPage } from "./shown.ts";

interface Props {
	readonly page: PackPage;
	/** "" where it is named beside it. */
	readonly alt: string;
	readonly width?: string;
}

/** A page as it will lie on the paper; drawn once it comes into sight, and anew where the job has changed. Until then the older drawing stays. */
export function PageImage({ page: { sheet, page, of }, alt, width }: Props) {
	const frame = useRef<HTMLSpanElement>(null);
	const [inSight, setInSight] = useState(false);
	const drawn = useMaker((state) => state.drawn[pageKey(of, page)]);
	const making = useMaker((state) => state.making);
	const standing = useMaker((state) => state.far === null);
	const fresh = drawn?.making === making;
	useEffect(() => {
		if (frame.current === null) return;
		const observer = new IntersectionObserver(([entry]) => setInSight(entry?.isIntersecting ?? false), {
			rootMargin: "200px",
		});
		observer.observe(frame.current);
		return () => observer.disconnect();
	}, []);
	useEffect(() => {
		if (inSight && standing && !fresh) drawPage(sheet, page);
	}, [inSight, standing, fresh, sheet, page]);
	const size = of.pages[page];
	if (size === undefined) return null;
	return (
		<span
			ref={frame}
			className="page-image"
			data-fresh={fresh && standing ? true : undefined}
			style={{ aspectRatio: `${size.width} / ${size.height}`, ...(width === undefined ? {} : { width }) }}
		>
			{drawn === undefined ? null : <img src={drawn.url} alt={alt} draggable={false} />}
		</span>
	);
}
