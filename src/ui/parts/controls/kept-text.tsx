import { useState } from 'preact/hooks';
import { TextField } from './field.tsx';

/** A text that is kept when it is left, not at every letter: one change, one undo. */
export function KeptText(props: {
  label: string;
  hint?: string;
  value: string;
  rows?: number;
  onKeep: (value: string) => void;
}) {
  const [draft, setDraft] = useState<string | undefined>();
  const keep = () => {
    if (draft !== undefined && draft.trim() !== props.value) props.onKeep(draft.trim());
    setDraft(undefined);
  };
  return (
    <div onFocusOut={keep}>
      <TextField
        label={props.label}
        hint={props.hint}
        value={draft ?? props.value}
        onInput={setDraft}
        {...(props.rows && { rows: props.rows })}
      />
    </div>
  );
}
