// Put in place of sw.js, this gives every device back to the network: for development, and for a host
// that no longer serves the course.
addEventListener("install", () => skipWaiting());
addEventListener("activate", (event) => {
  const gone = caches
    .keys()
    .then((names) =>
      Promise.all(
        names
          .filter((name) => name.startsWith(`rollbook ${registration.scope} `))
          .map((name) => caches.delete(name)),
      ),
    );
  event.waitUntil(gone.then(() => registration.unregister()));
});
