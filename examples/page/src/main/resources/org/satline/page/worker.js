// Keeps the installed page for the time without a network: the page itself and its manifest, nothing else.
const KEPT = 'satline-${version}';
const FILES = ['satline-page.html', 'satline-page.webmanifest'];
self.addEventListener('install', (event) => {
  event.waitUntil(caches.open(KEPT).then((cache) => cache.addAll(FILES)));
});
self.addEventListener('activate', (event) => {
  event.waitUntil(caches.keys().then((names) => Promise.all(
    names.filter((name) => name.startsWith('satline-') && name !== KEPT).map((name) => caches.delete(name)))));
});
self.addEventListener('fetch', (event) => {
  event.respondWith(caches.match(event.request).then((found) => found || fetch(event.request)));
});
