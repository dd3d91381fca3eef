// SPDX-License-Identifier: MIT
/// The style of the class page: large, black on white, one column on a telephone; on paper only the sheets to fold, the
/// steps and the questions. A highlighted page has a heavy outline as well as a tint, so that it is visible without
/// colour.
#pragma once

namespace bifolium {
inline namespace v0 {
namespace detail {

inline constexpr char const* class_style = R"css(
* { box-sizing: border-box; }
body { margin: 0 auto; max-width: 80rem; padding: 0 1rem 5rem; color: #000; background: #fff;
  font: 1.15rem/1.45 'DejaVu Serif', 'Liberation Serif', Georgia, serif; }
h1 { font-size: 2rem; margin: 1rem 0 .3rem; }
h2 { font-size: 1.5rem; border-top: 2px solid #000; padding-top: .6rem; margin: 2rem 0 .6rem; }
h3 { font-size: 1.2rem; margin: 1rem 0 .3rem; }
nav a { display: inline-block; margin-right: 1rem; color: #000; }
button { font: inherit; padding: .4rem 1rem; border: 2px solid #000; border-radius: .4rem; background: #fff; color: #000; }
button[aria-disabled=true] { border-style: dashed; color: #555; }
:focus-visible { outline: 4px solid #000; outline-offset: 2px; }
.skip { position: absolute; left: -100rem; }
.skip:focus { left: 1rem; top: 0; background: #fff; padding: .5rem; }
.bar { display: flex; flex-wrap: wrap; gap: .6rem; align-items: center; }
#said { position: fixed; left: 0; right: 0; bottom: 0; z-index: 9; margin: 0; padding: .5rem 1rem;
  background: #fff; border-top: 2px solid #000; max-height: 30vh; overflow: auto; }
#step { min-height: 3em; }
#table { position: relative; perspective: 1600px; margin: 1rem auto; }
.flap { position: absolute; left: 0; top: 0; width: 0; height: 0; transform-style: preserve-3d; }
.leaf-up { position: absolute; border: 1.5px solid #000; background: #fff; display: grid; place-items: center; }
.leaf-up.moves { background: #dcdcdc; }
.flap .leaf-up { backface-visibility: hidden; }
.leaf-up span, span.page span { border-bottom: .09em solid; line-height: 1; padding-bottom: .05em; }
.down span { transform: rotate(180deg); display: inline-block; }
.crease { position: absolute; border: 0 dashed #000; }
.side-by-side { display: grid; gap: 1.2rem; grid-template-columns: repeat(auto-fit, minmax(min(100%, 22rem), 1fr)); }
.side-by-side.small { grid-template-columns: repeat(auto-fill, minmax(6rem, 1fr)); gap: .6rem; }
figure { margin: 0; max-width: 38rem; }
figcaption { font-size: 1rem; }
figure svg, .leaves svg { width: 100%; height: auto; display: block; }
.book { display: flex; flex-wrap: wrap; gap: .9rem; list-style: none; padding: 0; margin: .6rem 0; }
.opening { display: flex; }
span.page { width: 4.4rem; height: 6.2rem; border: 1.5px solid #000; display: flex; flex-direction: column; align-items: center;
  justify-content: center; font-size: 1.9rem; }
span.page small { font-size: .8rem; line-height: 1.1; text-align: center; }
span.page.none { border-color: transparent; }
span.page.wrong { border-width: 5px; }
span.lit.page, .lit.leaf-up { background: #ffe08a; outline: 4px solid #000; outline-offset: -4px; }
.lit > .spot { fill: #ffe08a; stroke: #000; stroke-width: 1.6px; }
g.lit > .paper, g.lit > .wanting { stroke: #000; stroke-width: 1.8px; fill: #b58900; }
g.lit > .label { font-weight: bold; text-decoration: underline; }
tr.lit td, tr.lit th { background: #ffe08a; font-weight: bold; }
svg [tabindex] { outline: none; }
.spot { pointer-events: all; }
fieldset { border: 2px solid #000; display: flex; flex-wrap: wrap; gap: .3rem 1.4rem; }
.scroll { overflow-x: auto; }
table { border-collapse: collapse; font-size: .95rem; }
td, th { border: 1px solid #000; padding: .15rem .5rem; text-align: left; }
[hidden] { display: none !important; }
.for-print { display: none; }
@media (max-width: 30rem) { body { font-size: 1rem; } h1 { font-size: 1.5rem; } span.page { width: 3.6rem; height: 5.1rem; } }
@media print {
  body { padding: 0; max-width: none; }
  .for-screen, #said { display: none !important; }
  .for-print { display: block; }
  .asked { page: asked; padding: 15mm; font-size: 13pt; }
  .asked li { margin-bottom: 16mm; }
}
)css";

} // namespace detail
} // namespace v0
} // namespace bifolium
