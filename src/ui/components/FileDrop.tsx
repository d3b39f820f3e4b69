import type { ReactNode } from 'react';
import { Button, FileTrigger } from 'react-aria-components';
import { useFileDrop } from './useFileDrop';

interface Props {
  buttonText: string;
  onFile: (file: File) => void;
  children?: ReactNode;
}

/** File types that the system's file dialog offers; a dropped file is checked whatever its type. */
const offered = ['video/*', '.mkv', '.json'];

/**
 * A button that takes one file, in an area that says that dropping works too; a file dropped outside the area
 * is still taken.
 */
export function FileDrop({ buttonText, onFile, children }: Props) {
  const isOver = useFileDrop(onFile);
  return (
    <div className="file-drop" data-drop-target={isOver || undefined}>
      {children}
      <FileTrigger
        acceptedFileTypes={offered}
        onSelect={(files) => {
          const file = files?.[0];
          if (file !== undefined) onFile(file);
        }}
      >
        <Button className="button">{buttonText}</Button>
      </FileTrigger>
    </div>
  );
}
