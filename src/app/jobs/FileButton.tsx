import { useRef, type ReactElement } from 'react';
import { Button } from '../parts/Button.tsx';

interface FileButtonProps {
  readonly label: string;
  /** As the `accept` of a file input. */
  readonly accept: string;
  readonly onFile: (file: File) => void;
  readonly main?: boolean;
  readonly wide?: boolean;
  readonly size?: 'desk' | 'site';
}

/** Opens the system's picker. The input behind it is what the system understands; the button is what people press. */
export function FileButton({
  label,
  accept,
  onFile,
  main = false,
  wide = false,
  size = 'desk',
}: FileButtonProps): ReactElement {
  const input = useRef<HTMLInputElement>(null);
  return (
    <>
      <input
        ref={input}
        type="file"
        accept={accept}
        hidden
        aria-label={label}
        onChange={(event) => {
          const file = event.target.files?.[0];
          // The same file may be chosen twice in a row.
          event.target.value = '';
          if (file) onFile(file);
        }}
      />
      <Button size={size} wide={wide} kind={main ? 'main' : 'plain'} onClick={() => input.current?.click()}>
        {label}
      </Button>
    </>
  );
}
