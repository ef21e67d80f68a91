/** Fills that every drawing on the page refers to; drawn once. */
export function Patterns() {
  return (
    <svg class="patterns" width="0" height="0" aria-hidden="true" focusable="false">
      <defs>
        <pattern id="hatch" width="9" height="9" patternUnits="userSpaceOnUse" patternTransform="rotate(35)">
          <rect class="hatch-ground" width="9" height="9" />
          <rect class="hatch-line" width="2.5" height="9" />
        </pattern>
        <pattern id="split" width="12" height="12" patternUnits="userSpaceOnUse">
          <rect class="hatch-ground" width="12" height="12" />
          <rect class="hatch-line" width="5" height="12" />
        </pattern>
        <pattern id="crossed" width="10" height="10" patternUnits="userSpaceOnUse">
          <rect class="hatch-ground" width="10" height="10" />
          <path class="hatch-stroke" d="M0 0 L10 10 M10 0 L0 10" />
        </pattern>
      </defs>
    </svg>
  );
}
