import type { ReactNode } from "react";
import { Button, Dialog, Heading, Modal, ModalOverlay } from "react-aria-components";

interface Props {
	readonly title: string;
	readonly wide: boolean;
	readonly onClose: () => void;
	readonly children: ReactNode;
}

/** A sheet laid over the desk; on a phone it covers it. */
export function Sheet({ title, wide, onClose, children }: Props) {
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
