#!/usr/bin/env bash
# SPDX-License-Identifier: MIT
# Opens every drawing of a directory in a headless Chromium: none may give a console error or fail to parse, and by the
# browser's own fonts no text may leave its page or lie on other text.
#   tests/drawing/browser.sh DIR
# Exit code 77 when there is no Chromium (Debian: chromium); CHROMIUM names another one.
set -eu
browser=${CHROMIUM:-$(command -v chromium || command -v chromium-browser || true)}
if [ -z "$browser" ]; then
  echo "skipped: there is no chromium on the PATH (Debian: apt-get install chromium), nor is CHROMIUM set"
  exit 77
fi
cd "$1"
profile=$(mktemp -d)
trap 'rm -rf "$profile" index.html dom.txt log.txt report.txt' EXIT
{
  echo '<!DOCTYPE html><meta charset="UTF-8"><title>drawings</title><iframe width="900" height="900"></iframe><pre></pre><script>'
  echo 'const names = ['
  for file in *.svg; do echo "\"$file\","; done
  cat <<'JS'
];
const report = document.querySelector('pre'), frame = document.querySelector('iframe');
const opened = name => new Promise(done => { frame.onload = done; frame.src = name; });
const boxOf = (text, root) => {
  const box = text.getBBox(), size = +text.getAttribute('font-size'), base = +text.getAttribute('y');
  const to = root.getScreenCTM().inverse().multiply(text.getScreenCTM());
  const at = (x, y) => new DOMPoint(x, y).matrixTransform(to);
  const a = at(box.x, base - 0.73 * size), b = at(box.x + box.width, base);
  return {left: Math.min(a.x, b.x), right: Math.max(a.x, b.x), top: Math.min(a.y, b.y), bottom: Math.max(a.y, b.y),
          words: text.textContent};
};
(async () => {
  let texts = 0;
  for (const name of names) {
    await opened(name);
    const root = frame.contentDocument.documentElement, tell = what => { report.append(`${name}: ${what}\n`); };
    if (root.nodeName !== 'svg' || root.querySelector('parsererror')) { tell('is not SVG'); continue; }
    const page = root.viewBox.baseVal;
    const boxes = [...root.querySelectorAll('text')].map(text => boxOf(text, root));
    texts += boxes.length;
    boxes.forEach((one, i) => {
      if (one.left < 0 || one.top < 0 || one.right > page.width || one.bottom > page.height) tell(`'${one.words}' leaves the page`);
      for (const other of boxes.slice(0, i))
        if (one.left < other.right && other.left < one.right && one.top < other.bottom && other.top < one.bottom)
          tell(`'${one.words}' lies on '${other.words}'`);
    });
  }
  report.append(`opened ${names.length} drawings with ${texts} texts\n`);
})().catch(error => { report.append(`${error}\n`); console.error(error); });
</script>
JS
} >index.html
"$browser" --headless --no-sandbox --disable-gpu --disable-dev-shm-usage --disable-quic --no-first-run \
  --disable-background-networking --disable-component-update --disable-sync --user-data-dir="$profile" \
  --allow-file-access-from-files --enable-logging=stderr --virtual-time-budget=3600000 --dump-dom \
  "file://$PWD/index.html" >dom.txt 2>log.txt || { cat log.txt; exit 1; }
sed -n '/<pre>/,/<\/pre>/p' dom.txt | sed 's/<pre>//; s/.*<iframe[^>]*><\/iframe>//; s/<\/pre>.*//' | grep -v '^$' >report.txt || true
cat report.txt
grep 'CONSOLE' log.txt && { echo "there are console messages"; exit 1; }
[ "$(wc -l <report.txt)" = 1 ] && grep -q "^opened $(ls *.svg | wc -l) drawings" report.txt
