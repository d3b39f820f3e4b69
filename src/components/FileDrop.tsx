import type { ReactNode } from 'react';
import { Button, DropZone, FileTrigger, isFileDropItem } from 'react-aria-components';

interface Props {
  /** What the area is for, for those who do not see it. */
  label: string;
  buttonText: string;
  onFile: (file: File) => void;
  children?: ReactNode;
}

/** File types that the system's file dialog offers; what is dropped is looked at, whatever its type. */
const offered = ['video/*', '.mkv', '.json'];

/** A place to drop one file on, with a button for those who would rather choose it. */
export function FileDrop({ label, buttonText, onFile, children }: Props) {
  return (
    <DropZone
      className="file-drop"
      aria-label={label}
      getDropOperation={() => 'copy'}
      onDrop={({ items }) => {
        const [item] = items.filter(isFileDropItem);
        if (item !== undefined) void item.getFile().then(onFile);
      }}
    >
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
    </DropZone>
  );
}
