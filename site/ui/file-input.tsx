/** Files from the device; the same one can be chosen again. */
export function FileInput({
  id,
  accept,
  multiple = false,
  take,
}: {
  readonly id: string;
  readonly accept: string;
  readonly multiple?: boolean;
  readonly take: (files: readonly File[]) => Promise<void>;
}) {
  const taken = (input: HTMLInputElement) => {
    const files = [...(input.files ?? [])];
    input.value = "";
    if (files.length > 0) void take(files);
  };
  return (
    <input
      type="file"
      id={id}
      accept={accept}
      multiple={multiple}
      onChange={({ currentTarget }) => taken(currentTarget)}
    />
  );
}
