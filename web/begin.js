/** The first script of the page, small: what takes longest is on its way before the rest is read. */
import "./python/begun.js";
