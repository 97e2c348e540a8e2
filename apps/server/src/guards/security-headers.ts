import type { MiddlewareHandler } from 'hono';
import { secureHeaders } from 'hono/secure-headers';

/** What a browser may do with what this server sends. */
export const securityHeaders: MiddlewareHandler = secureHeaders({
  contentSecurityPolicy: {
    defaultSrc: ["'self'"],
    baseUri: ["'none'"],
    objectSrc: ["'none'"],
    formAction: ["'self'"],
    frameAncestors: ["'self'"],
    // A paper is shown and kept from memory.
    frameSrc: ["'self'", 'blob:'],
    imgSrc: ["'self'", 'data:', 'blob:'],
    fontSrc: ["'self'", 'data:'],
    workerSrc: ["'self'", 'blob:'],
    // The widgets put small style elements into the page; scripts stay shut out.
    styleSrc: ["'self'", "'unsafe-inline'"],
  },
  // With 'no-referrer' a browser sends a form of our own page with the origin 'null'.
  referrerPolicy: 'same-origin',
  // Loopback is not served over TLS.
  strictTransportSecurity: false,
  permissionsPolicy: { camera: ['self'], microphone: ['self'], geolocation: [], payment: [], usb: ['self'] },
});

/** What is worked out from a job may be kept by nobody on the way. */
export const keepNothing: MiddlewareHandler = async (c, next) => {
  await next();
  if (!c.res.headers.has('Cache-Control')) c.res.headers.set('Cache-Control', 'no-store');
};
