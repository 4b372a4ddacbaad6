import type { ButtonHTMLAttributes, ComponentChildren } from "preact";

type More = Omit<ButtonHTMLAttributes, "onClick" | "id" | "class" | "type">;

/** A button that does something. */
export function Button({
  id,
  large = false,
  work,
  children,
  ...more
}: {
  readonly id?: string;
  readonly large?: boolean;
  readonly work: () => void;
  readonly children: ComponentChildren;
} & More) {
  return (
    <button type="button" id={id} class={large ? "large" : undefined} onClick={work} {...more}>
      {children}
    </button>
  );
}
