import { type ReactNode, useEffect } from "react";
import { Button, Dialog, Heading, Modal, ModalOverlay } from "react-aria-components";

interface Props {
	readonly title: string;
	readonly wide: boolean;
	readonly onClose: () => void;
	readonly children: ReactNode;
}

/** A sheet laid over the desk; on a phone it covers it. */
export function Sheet({ title, wide, onClose, children }: Props) {
	useEffect(() => bringFocusIntoView, []);
	return (
		<ModalOverlay className="shade" isOpen isDismissable onOpenChange={(open) => open || onClose()}>
			<Modal className={wide ? "sheet sheet-wide" : "sheet"}>
				<Dialog className="sheet-dialog">
					<div className="sheet-head">
						<Heading slot="title" level={2}>
							{title}
						</Heading>
						<Button className="button" onPress={onClose}>
							Close
						</Button>
					</div>
					<div className="sheet-body">{children}</div>
				</Dialog>
			</Modal>
		</ModalOverlay>
	);
}

/** Whoever goes on by keyboard sees where: what the sheet was laid over may have grown, and the button that called it moved out of sight. */
function bringFocusIntoView(): void {
	// The focus goes back to that button in the next frame.
	requestAnimationFrame(() =>
		requestAnimationFrame(() => document.querySelector(":focus-visible")?.scrollIntoView({ block: "nearest" })),
	);
}
