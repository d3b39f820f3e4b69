import type { ReactNode } from 'react';
import { Button, FileTrigger } from 'react-aria-components';
import { useFileDrop } from './useFileDrop';

interface Props {
  buttonText: string;
  onFiles: (files: readonly File[]) => void;
  children?: ReactNode;
}

/** File types that the system's file dialog offers; a dropped file is checked whatever its type. */
const offered = ['video/*', '.mkv', '.json'];

/**
 * A button that takes files, in an area that says that dropping works too; what is dropped outside the area
 * is still taken.
 */
export function FileDrop({ buttonText, onFiles, children }: Props) {
  const isOver = useFileDrop((_, files) => onFiles(files));
  return (
    <div className="file-drop" data-drop-target={isOver || undefined}>
      {children}
      <FileTrigger
        acceptedFileTypes={offered}
        allowsMultiple
        onSelect={(files) => {
          const chosen = [...(files ?? [])];
          if (chosen.length > 0) onFiles(chosen);
        }}
      >
        <Button className="button">{buttonText}</Button>
      </FileTrigger>
    </div>
  );
}
