// Unpacks the data files, which stand deflated in the page, and starts. Nothing is fetched.
(async function () {
  'use strict';
  try {
    const holder = document.getElementById('files');
    const text = atob(holder.textContent);
    const packed = new Uint8Array(text.length);
    for (let i = 0; i < text.length; i++) {
      packed[i] = text.charCodeAt(i);
    }
    holder.remove();
    const stream = new Blob([packed]).stream().pipeThrough(new DecompressionStream('deflate'));
    const all = await new Response(stream).arrayBuffer();
    const view = new DataView(all);
    const names = new TextDecoder();
    globalThis.satlineFiles = new Map();
    for (let at = 0; at < all.byteLength;) {
      const length = view.getUint16(at);
      const name = names.decode(new Uint8Array(all, at + 2, length));
      const size = view.getUint32(at + 2 + length);
      at += 6 + length;
      globalThis.satlineFiles.set(name, new Int8Array(all, at, size));
      at += size;
    }
    main([]);
    document.documentElement.dataset.ready = String(Math.round(performance.now()));
    if (location.protocol.startsWith('http') && 'serviceWorker' in navigator) {
      const link = document.createElement('link');
      link.rel = 'manifest';
      link.href = 'satline-page.webmanifest';
      document.head.appendChild(link);
      navigator.serviceWorker.register('satline-worker.js');
    }
  } catch (e) {
    document.getElementById('screen').textContent = 'Satline cannot start in this browser: ' + e.message;
    throw e;
  }
})();
