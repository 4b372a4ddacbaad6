import type { Parameter } from "@rollbook/lib";
import { slider } from "@rollbook/page";
import { useLayoutEffect, useRef } from "preact/hooks";

/** The slider of the chapters' figures, for a value that the page knows. */
export function SliderRow({
  id,
  parameter,
  value,
  report,
}: {
  readonly id: string;
  readonly parameter: Parameter;
  readonly value: number;
  readonly report: (value: number) => void;
}) {
  const place = useRef<HTMLDivElement>(null);
  const latest = useRef(report);
  latest.current = report;
  const made = useRef<ReturnType<typeof slider>>(undefined);
  const reported = useRef(value);
  useLayoutEffect(() => {
    made.current = slider(id, parameter, (moved) => {
      reported.current = moved;
      latest.current(moved);
    });
    made.current.set(value);
    place.current?.replaceChildren(made.current.row);
  }, []);
  useLayoutEffect(() => {
    if (value !== reported.current) made.current?.set(value);
    reported.current = value;
  }, [value]);
  return <div class="slider-place" ref={place} />;
}
