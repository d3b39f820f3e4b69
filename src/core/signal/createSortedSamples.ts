/** Numbers added one by one and kept sorted, so that a quantile costs nothing. */
export interface SortedSamples {
  /** @param value  finite */
  add(value: number): void;
  /**
   * @param share  0 = smallest, 0.5 = median, 1 = largest
   * @returns  quantileOf over all values so far; undefined where there are none
   */
  quantile(share: number): number | undefined;
}

export function createSortedSamples(): SortedSamples {
  let values = new Float64Array(1024);
  let count = 0;

  /** Index of the first larger value. */
  const placeOf = (value: number) => {
    let [low, high] = [0, count];
    while (low < high) {
      const middle = (low + high) >> 1;
      if (values[middle]! <= value) low = middle + 1;
      else high = middle;
    }
    return low;
  };
  return {
    add(value) {
      if (count === values.length) {
        const more = new Float64Array(2 * count);
        more.set(values);
        values = more;
      }
      const place = placeOf(value);
      values.copyWithin(place + 1, place, count);
      values[place] = value;
      count++;
    },
    quantile(share) {
      if (count === 0) return undefined;
      const place = share * (count - 1);
      const below = Math.floor(place);
      const low = values[below]!;
      const high = below + 1 < count ? values[below + 1]! : low;
      return low + (place - below) * (high - low);
    },
  };
}
