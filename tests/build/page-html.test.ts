import { describe, expect, it } from "vitest";
import { pageHtml, pagePolicy } from "../../src/build/page-html.ts";

const texts = { style: "p{color:red}", screen: "start()", worker: "work()", licences: "MIT" };

describe("pagePolicy", () => {
  it("allows by the digest of exactly that text", () => {
    // `printf 'start()' | openssl dgst -sha256 -binary | openssl base64`, and the same of the style.
    const policy = pagePolicy(texts);
    expect(policy).toContain("script-src 'sha256-DIm7WJS6ZKDYe5qFLPy+h4JFI9Bol5QmYC57mt3Fb00=';");
    expect(policy).toContain("style-src 'sha256-p0bF+un5yUb9MBO6xRb8kPHlY2BdpHVtLiFkDrZPF64=';");
  });

  it("names no address, and nothing that would let other scripts run", () => {
    expect(pagePolicy(texts)).not.toMatch(/unsafe|https?:|\*|'self'|data:/);
  });
});

describe("pageHtml", () => {
  it("holds each text once, where it belongs", () => {
    const html = pageHtml(texts);
    expect(html).toContain("<style>p{color:red}</style>");
    expect(html).toContain("<script>start()</script>");
    expect(html).toContain('<script type="text/plain" id="worker-code">work()</script>');
    expect(html).toContain('<script type="text/plain" id="licences">MIT</script>');
  });

  it("keeps a worker's code whole that speaks of scripts", () => {
    const html = pageHtml({ ...texts, worker: 'a="</script><!--<script>"' });
    expect(html).toContain('a="&lt;/script>&lt;!--&lt;script>"');
    expect(html.match(/<\/script>/g)).toHaveLength(3);
  });

  it.each([
    ["script", { screen: 'a="</script>"' }],
    ["script", { screen: "a<!--b" }],
    ["style", { style: "</style>" }],
    ["line ends", { worker: "a\r\nb" }],
    ["U+0000", { worker: "a\0b" }],
  ])("refuses to make a page HTML would read otherwise: %s", (_, text) => {
    expect(() => pageHtml({ ...texts, ...text })).toThrow(/HTML/);
  });
});
