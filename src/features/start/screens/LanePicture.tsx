/** The one idea as a line drawing: three legs with the knee in the lane, at its edge, and outside it. */
export function LanePicture() {
  return (
    <svg
      className="lane-picture"
      viewBox="10 0 318 276"
      role="img"
      aria-label="Three legs with a lane standing on the foot: knee in the lane, knee at its edge, knee outside it"
    >
      <Leg x={55} kneeX={0} mark={<circle r="8" fill="var(--in-line)" />} words={['in', 'line']} />
      <Leg
        x={165}
        kneeX={15}
        mark={
          <>
            <circle r="8" fill="var(--mark-hollow)" />
            <path d="M0-8A8 8 0 0 0 0 8Z" fill="var(--cant-tell)" />
          </>
        }
        words={['too close', 'to tell']}
      />
      <Leg
        x={275}
        kneeX={32}
        mark={<path d="M10 0L-7 8.5V-8.5Z" fill="var(--out-of-line)" />}
        words={['out', 'of line']}
      />
    </svg>
  );
}

function Leg(props: { x: number; kneeX: number; mark: React.ReactNode; words: readonly [string, string] }) {
  const { x, kneeX, mark, words } = props;
  return (
    <g transform={`translate(${x} 0)`}>
      <rect x="-15" y="10" width="30" height="204" fill="var(--lane)" />
      <path d="M-15 10v204M15 10v204" stroke="var(--lane-edge)" strokeWidth="1.5" />
      <path
        d={`M0 12L${kneeX} 112L0 208M-4 208c-9 2-12 12-10 14h28c2-2-1-12-10-14z`}
        fill="none"
        stroke="var(--ink)"
        strokeWidth="3"
        strokeLinejoin="round"
        strokeLinecap="round"
      />
      <g transform={`translate(${kneeX} 112)`} stroke="var(--mark-outline)" strokeWidth="1.5">
        {mark}
      </g>
      <text textAnchor="middle" fill="var(--ink-soft)" fontSize="18">
        {words.map((word, line) => (
          <tspan key={word} x="0" y={246 + 22 * line}>
            {word}
          </tspan>
        ))}
      </text>
    </g>
  );
}
