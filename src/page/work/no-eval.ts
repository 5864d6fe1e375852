/**
 * To be imported before anything that makes a zod shape: a shape that may not
 * compile itself does not even try, which a page's policy would report.
 */
import * as z from "zod";

z.config({ jitless: true });
