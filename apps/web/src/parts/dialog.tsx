import type { ReactNode } from 'react';
import { Dialog, Heading, Modal, ModalOverlay } from 'react-aria-components';

interface Props {
  readonly title: string;
  readonly isOpen: boolean;
  readonly onClose: () => void;
  readonly children: ReactNode;
}

/** A question or a closer look, above the page. Escape or a tap beside it closes it. */
export function Sheet({ title, isOpen, onClose, children }: Props) {
  return (
    <ModalOverlay
      className="sheet-ground"
      isOpen={isOpen}
      isDismissable
      onOpenChange={(open) => {
        if (!open) onClose();
      }}
    >
      <Modal className="sheet">
        <Dialog className="sheet-inside">
          <Heading slot="title" className="sheet-title">
            {title}
          </Heading>
          {children}
        </Dialog>
      </Modal>
    </ModalOverlay>
  );
}
