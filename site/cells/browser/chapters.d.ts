/** The part of the physics that the chapters' cells import, put together by the build. */
declare module "@rollbook/chapters" {
  export * from "@rollbook/lib";
}
