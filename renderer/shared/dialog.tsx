import { AlertDialog } from "@base-ui/react/alert-dialog";
import { Dialog } from "@base-ui/react/dialog";
import { type ReactNode, useRef } from "react";
import { Button } from "./button.tsx";
import "./dialog.css";

export interface ModalProps {
  readonly title: string;
  readonly open: boolean;
  readonly onClose: () => void;
  readonly children: ReactNode;
  readonly foot?: ReactNode;
  readonly wide?: boolean;
}

const firstField = ':is(input, textarea, button, a[href], [role="checkbox"]):not([type="file"], [tabindex="-1"], :disabled)';

export function Modal({ title, open, onClose, children, foot, wide }: ModalProps) {
  const body = useRef<HTMLDivElement>(null);
  return (
    <Dialog.Root open={open} onOpenChange={(next) => (next ? undefined : onClose())}>
      <Dialog.Portal>
        <Dialog.Backdrop className="dialog-backdrop" />
        <Dialog.Popup
          className="dialog"
          data-size={wide ? "wide" : undefined}
          // Whoever opens a dialog came for its fields; the way out has Escape.
          initialFocus={() => body.current?.querySelector<HTMLElement>(firstField) ?? true}
        >
          <div className="dialog-head">
            <Dialog.Title className="dialog-title">{title}</Dialog.Title>
            <Dialog.Close render={<Button weight="quiet" />}>Close</Dialog.Close>
          </div>
          <div className="dialog-body" ref={body}>
            {children}
          </div>
          {foot ? <div className="dialog-foot">{foot}</div> : null}
        </Dialog.Popup>
      </Dialog.Portal>
    </Dialog.Root>
  );
}

export interface AskProps {
  readonly title: string;
  readonly open: boolean;
  readonly yes: string;
  readonly no?: string;
  readonly onYes: () => void;
  readonly onNo: () => void;
  readonly children: ReactNode;
}

/** A question that must be answered before something that cannot be taken back. The safe answer has the focus. */
export function Ask({ title, open, yes, no = "Keep it", onYes, onNo, children }: AskProps) {
  return (
    <AlertDialog.Root open={open} onOpenChange={(next) => (next ? undefined : onNo())}>
      <AlertDialog.Portal>
        <AlertDialog.Backdrop className="dialog-backdrop" />
        <AlertDialog.Popup className="dialog">
          <div className="dialog-head">
            <AlertDialog.Title className="dialog-title">{title}</AlertDialog.Title>
          </div>
          <AlertDialog.Description render={<div className="dialog-body" />}>{children}</AlertDialog.Description>
          <div className="dialog-foot">
            <AlertDialog.Close render={<Button />}>{no}</AlertDialog.Close>
            <Button weight="grave" onClick={onYes}>
              {yes}
            </Button>
          </div>
        </AlertDialog.Popup>
      </AlertDialog.Portal>
    </AlertDialog.Root>
  );
}
