import { useEffect, useState } from 'react';

/** Whether something came less than a while ago; null counts as nothing. */
export function useLately(key: string | null, forMs: number): boolean {
  const [past, setPast] = useState<string | null>(null);
  useEffect(() => {
    if (key === null) return;
    const timer = setTimeout(() => setPast(key), forMs);
    return () => clearTimeout(timer);
  }, [key, forMs]);
  return key !== null && key !== past;
}
