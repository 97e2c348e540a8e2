import './papers.css';
import { useEffect, useState } from 'react';
import { Dialog, Heading, Modal, ModalOverlay } from 'react-aria-components';
import { useLanguage } from '../parts/language.tsx';
import { PdfPages } from '../parts/pdf-pages.tsx';
import { saveFile } from '../parts/save-file.ts';
import { canShareFile, shareFile } from '../parts/share-file.ts';
import { useBackToClose } from '../parts/use-back.ts';

interface Props {
  readonly words: string;
  readonly file: File;
  readonly onClose: () => void;
}

const zooms: readonly number[] = [1, 1.5, 2, 3];

/** A paper over the whole screen: to look at, to print, to hand on, and back to where one was. */
export function PaperPreview({ words, file, onClose }: Props) {
  const { say } = useLanguage();
  const [zoom, setZoom] = useState(1);
  const [said, setSaid] = useState<string>();
  const [address, setAddress] = useState<string>();
  useBackToClose(onClose);
  useEffect(() => {
    const made = URL.createObjectURL(file);
    setAddress(made);
    // A tab that was opened with it has read it by then.
    return () => void setTimeout(() => URL.revokeObjectURL(made), 60_000);
  }, [file]);
  const step = zooms.indexOf(zoom);

  async function share(): Promise<void> {
    const isDone = await shareFile(file);
    if (!isDone)
      setSaid(
        say('Cannot share {file} from here. Save it, and send it from your files.', { file: file.name }),
      );
  }

  return (
    <ModalOverlay
      className="paper-ground"
      isOpen
      onOpenChange={(isOpen) => {
        if (!isOpen) onClose();
      }}
    >
      <Modal className="paper-over">
        <Dialog className="paper-dialog">
          <div className="paper-head">
            <button type="button" className="button" onClick={onClose}>
              {say('← Back')}
            </button>
            <Heading slot="title" className="paper-title">
              {words}
            </Heading>
          </div>
          <div className="button-row paper-tools">
            <a className="button strong" href={address} target="_blank" rel="noreferrer">
              {say('Open it to print')}
            </a>
            {canShareFile(file) && (
              <button type="button" className="button" onClick={() => void share()}>
                {say('Share it')}
              </button>
            )}
            <button
              type="button"
              className="button"
              onClick={() => {
                saveFile(file, file.name);
                setSaid(say('{file} is among your downloads.', { file: file.name }));
              }}
            >
              {say('Save it')}
            </button>
            <button
              type="button"
              className="button"
              disabled={step === 0}
              onClick={() => setZoom(zooms[step - 1] ?? zoom)}
            >
              {say('Smaller')}
            </button>
            <button
              type="button"
              className="button"
              disabled={step === zooms.length - 1}
              onClick={() => setZoom(zooms[step + 1] ?? zoom)}
            >
              {say('Larger')}
            </button>
          </div>
          <p aria-live="polite" className="paper-said">
            {said}
          </p>
          <PdfPages
            content={file}
            zoom={zoom}
            onProblem={() =>
              setSaid(say('This browser cannot show the pages here. Open it to print, or save it.'))
            }
          />
        </Dialog>
      </Modal>
    </ModalOverlay>
  );
}
