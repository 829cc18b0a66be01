/** Where true north is; `northDegrees` is clockwise from up the sheet. */
export function NorthArrow({ northDegrees }: { readonly northDegrees: number | undefined }) {
  if (northDegrees === undefined) {
    return <p class="north">north not stated</p>;
  }
  return (
    <svg
      class="north"
      viewBox="-28 -28 56 56"
      role="img"
      aria-label={`North lies ${northDegrees}° from up the sheet`}
    >
      <g transform={`rotate(${northDegrees})`}>
        <path class="north-shaft" d="M0 22 V-6" />
        <path class="north-half" d="M0 -24 L8 -2 H0 Z" />
        <path class="north-whole" d="M0 -24 L8 -2 H-8 Z" />
        <text y="4" x="9" transform={`rotate(${-northDegrees} 12 0)`}>
          N
        </text>
      </g>
    </svg>
  );
}
