#include "render/html/html_style.hpp"

namespace standin::cli {
namespace {

constexpr std::string_view style = R"css(
:root{color-scheme:light dark;
--paper:#fbf8f1;--card:#fffdf8;--ink:#22261f;--soft:#575b4f;--rule:#cfc8b6;--moss:#2d5f34;--clay:#8c3413;--blush:#fbeee4;
--s0:#5b6470;--s1:#2d5f34;--s2:#8c3413;--s3:#5a3d86;--trough:#e6e0d0}
@media (prefers-color-scheme:dark){:root{
--paper:#161915;--card:#1e221c;--ink:#ebe7da;--soft:#b5b5a5;--rule:#454b40;--moss:#9fd29c;--clay:#f2ab86;--blush:#2f211a;
--s0:#b3bcc8;--s1:#9fd29c;--s2:#f2ab86;--s3:#c9b1f0;--trough:#363b31}}
*{box-sizing:border-box}
html{-webkit-text-size-adjust:100%}
body{margin:0;background:var(--paper);color:var(--ink);font:1rem/1.5 "Gill Sans","Gill Sans MT",Seravek,"Trebuchet MS","DejaVu Sans Condensed",sans-serif}
body>header,main,body>footer{max-width:62rem;margin:0 auto;padding:0 1rem}
body>header{padding-top:1.5rem}
.kind{margin:0;color:var(--moss);font-size:.95rem;letter-spacing:.06em;font-variant:small-caps;border-top:6px double var(--moss);padding-top:.5rem}
h1,h2,h3{font-family:Rockwell,"Roboto Slab","Bookman Old Style",Bookman,Georgia,serif;line-height:1.2;font-weight:600}
h1{font-size:clamp(1.6rem,5vw,2.4rem);margin:.2rem 0 .5rem;overflow-wrap:anywhere}
h2{font-size:1.25rem;margin:2rem 0 .6rem;padding-bottom:.2rem;border-bottom:1px solid var(--rule)}
h3{font-size:1.05rem;margin:1.4rem 0 .4rem}
p{margin:.4rem 0}
p,li,caption,figcaption,h2,h3{overflow-wrap:anywhere}
.lead{font-size:1.15rem;max-width:44rem}
.soft,small{color:var(--soft);font-size:.9rem}
a{color:var(--moss)}
a:focus-visible,[tabindex]:focus-visible,input:focus-visible{outline:3px solid var(--moss);outline-offset:2px}
ul,ol{padding-left:1.3rem;margin:.4rem 0}
li{margin:.15rem 0}
.safety{border:2px solid var(--clay);background:var(--blush);padding:.2rem 1rem .8rem;margin:1.2rem 0;border-radius:4px}
.safety h2{border:0;margin:.6rem 0 .2rem;color:var(--clay)}
.safety h3{margin:.8rem 0 .2rem}
.safety .cook{font-size:1.2rem;font-weight:600;margin:.2rem 0}
.cautions{columns:22rem;column-gap:2rem;font-size:.9rem;line-height:1.4}
.cautions li{break-inside:avoid}
.src{color:var(--soft);font-size:.88em;overflow-wrap:anywhere}
.wide{overflow-x:auto;max-width:100%}
table{border-collapse:collapse;width:100%;font-variant-numeric:tabular-nums}
caption{text-align:left;color:var(--soft);font-size:.9rem;padding:.2rem 0 .4rem}
th,td{text-align:left;vertical-align:top;padding:.3rem .6rem .3rem 0;border-bottom:1px solid var(--rule)}
th{font-weight:600}
thead th{font-size:.9rem;color:var(--soft);border-bottom:2px solid var(--rule)}
.num{text-align:right;white-space:nowrap}
.range{display:block;color:var(--soft);font-size:.85rem;font-weight:400;white-space:nowrap}
.props .range{white-space:normal}
small{font-weight:400}
.props tbody tr:first-child>*{border-bottom:0;padding-bottom:0}
.props .num{padding-left:.4rem}
.props .pic{padding-top:0}
.bands{display:block;width:100%;max-width:24rem;height:auto}
.key{width:28px;height:14px;vertical-align:-2px;margin-right:.35rem}
.axis{stroke:var(--rule);stroke-width:1}
.band{stroke-width:3;stroke-linecap:round}
.band.s0{stroke:var(--s0)}.band.s1{stroke:var(--s1)}.band.s2{stroke:var(--s2)}.band.s3{stroke:var(--s3)}
.mark{stroke-width:2.5}
.mark.s0{fill:var(--paper);stroke:var(--s0)}.mark.s1{fill:var(--s1);stroke:var(--s1)}
.mark.s2{fill:var(--s2);stroke:var(--s2)}.mark.s3{fill:var(--paper);stroke:var(--s3)}
.end{font-size:11px;fill:var(--soft)}
.swatches{display:grid;grid-template-columns:repeat(3,1fr);gap:.8rem;margin:.8rem 0;padding:0}
.swatches figure{margin:0}
.swatches .pair{display:flex}
.swatches .pair svg+svg{margin-left:-1px}
.swatch{display:block;flex:1;min-width:0;width:100%;height:4.5rem}
.swatch rect{stroke:var(--ink);stroke-width:.6}
figcaption{font-size:.9rem;line-height:1.35;margin-top:.3rem}
.bar{display:block;width:100%;min-width:4rem;height:.8rem;margin-top:.35rem}
.trough{fill:var(--trough)}.fill{fill:var(--moss)}
.two{display:grid;gap:0 2.5rem}
.two>*{min-width:0}
.parts{columns:22rem;column-gap:2.5rem}.parts>*{break-inside:avoid}
.answers{max-width:48rem;font-size:1.05rem}
.beside{display:grid;gap:0 2.5rem;align-items:start}
.beside>*{min-width:0}
@media (min-width:52rem){.two{grid-template-columns:1fr 1fr}.beside{grid-template-columns:20rem 1fr}.sheet .flow{columns:2;column-gap:2.5rem}}
.wheel{display:block;width:100%;max-width:24rem;height:auto;margin:0 auto}
.ring{fill:none;stroke:var(--rule);stroke-dasharray:2 4}
.spoke{stroke:var(--s1);stroke-width:2}.far{stroke-dasharray:6 4}
.node{fill:var(--paper);stroke:var(--s1);stroke-width:2}
.rank{font-size:14px;font-weight:600;fill:var(--ink)}
.hub{fill:var(--moss)}.hubname{font-size:13px;font-weight:600;fill:var(--paper)}
.card{background:var(--card);border:1px solid var(--rule);border-left:6px solid var(--moss);padding:.2rem 1rem 1rem;margin:1.5rem 0;border-radius:4px}
.card h2{border:0;margin:.8rem 0 .3rem}
details{margin:.8rem 0}summary{cursor:pointer;color:var(--moss);font-weight:600}
summary:focus-visible{outline:3px solid var(--moss);outline-offset:2px}
.yes::before{content:"\2713\00a0"}.no::before{content:"\2717\00a0"}
.new{color:var(--clay);font-weight:600}
input[type=checkbox]{width:1.25rem;height:1.25rem;margin:.1rem .6rem 0 0;flex:none;accent-color:var(--moss)}
.tick{display:flex;align-items:flex-start}
.big{font-size:1.15rem;font-weight:600}
.steps{list-style:none;padding:0}
.steps li{border-bottom:1px solid var(--rule);padding:.6rem 0;margin:0;break-inside:avoid}
.steps h3{margin:0;font-size:1.1rem}
.steps p{margin:.15rem 0 .15rem 1.85rem}
.steps .gauge{font-weight:600;color:var(--moss)}
.steps .how .soft{display:block}
.label{border:1px solid var(--ink);padding:.6rem .8rem;max-width:44rem;background:var(--card)}
body>footer{margin-top:2.5rem;padding-bottom:2rem;color:var(--soft);font-size:.9rem}
body>footer p{border-top:1px solid var(--rule);padding-top:.6rem}
@media (max-width:30rem){.range{white-space:normal}.props .key{display:block;margin:0 0 0 auto}
.swatches{grid-template-columns:1fr;gap:.5rem}.swatches figure{display:grid;grid-template-columns:7rem 1fr;gap:.8rem;align-items:center}
.swatch{height:4rem}th,td{padding-right:.4rem}.props{font-size:.85rem}.props .range{font-size:.75rem}.props .num{padding-left:0;padding-right:.3rem}.props thead th{font-size:.8rem}.safety,.card{padding-left:.7rem;padding-right:.7rem}}
@media print{
@page{margin:9mm}
:root{color-scheme:light;--paper:#fff;--card:#fff;--ink:#000;--soft:#333;--rule:#999;--moss:#1f4a26;--clay:#6e250b;--blush:#fff;
--s0:#444;--s1:#1f4a26;--s2:#6e250b;--s3:#3e2763;--trough:#ddd}
html{font-size:9.2pt}
body{line-height:1.28}
body>header,main,body>footer{max-width:none;padding:0}
body>header{padding-top:0}
h1{font-size:17pt;margin:0 0 .1rem}h2{font-size:11.5pt;margin:.7rem 0 .2rem}h3{font-size:10pt;margin:.6rem 0 .1rem}
h1,h2,h3,thead,caption,.kind,.lead,.head{break-after:avoid}
p,li{orphans:2;widows:2}
tr,figure,.swatches,.safety,.steps li,.label,.props tbody,.parts>*{break-inside:avoid}
.card{margin:.6rem 0;padding:.1rem .6rem .3rem}.card h2{margin:.3rem 0 .1rem}
.bands{max-width:19rem}.card h2+p{break-after:avoid}
.lead{font-size:10.5pt;max-width:none}
.kind{font-size:8.5pt;border-top-width:4px;padding-top:.1rem}
th,td{padding-top:.1rem;padding-bottom:.1rem}
.wide{overflow:visible}
.two{grid-template-columns:1fr 1fr}
.beside{grid-template-columns:9cm 1fr}
.safety{margin:.4rem 0;padding:.1rem .6rem .3rem}
.safety h2{margin:.2rem 0 0}.safety h3{margin:.3rem 0 0}
.cautions{columns:2;font-size:8pt;line-height:1.2}
.cautions li{margin:.05rem 0}
input[type=checkbox]{appearance:none;width:.85rem;height:.85rem;border:1.2px solid #000;margin:.08rem .4rem 0 0}
.screen,details:not([open]){display:none}
.swatches{grid-template-columns:repeat(3,1fr);margin:.3rem 0}.swatches figure{display:block}.swatch{height:1.1cm}
body>footer{margin-top:.4rem;padding-bottom:0;font-size:7.5pt}
body>footer p{padding-top:.2rem}
body.sheet{font-size:10pt;line-height:1.16;font-size-adjust:.49}
.sheet h2{font-size:11pt;margin:.35rem 0 .1rem}
.sheet p{margin:.1rem 0}
.sheet .safety{margin:.3rem 0;padding:.1rem .4rem .2rem}
.sheet .safety>h2{display:none}
.sheet .safety .cook{font-size:12pt}
.sheet .safety h3{font-size:9pt;margin:0;float:left;padding-right:.5rem}
.sheet .safety>:not(h3):not(.cook):not(.cautions){margin:0}
.sheet .safety ul:not(.cautions){padding-left:.9rem;columns:2;column-gap:1rem;font-size:9pt;overflow:hidden}
.sheet .safety h3:has(+.cautions){display:none}
.sheet .kind{border:0;padding:0;float:right}
.sheet .cautions{font-size:7.5pt;line-height:1.1;columns:3;column-gap:.6rem;padding:0;margin:0;list-style-position:inside}
.sheet .two{gap:0 .8rem;grid-template-columns:1.15fr 1fr}
.sheet table{font-size:10pt}
.sheet th,.sheet td{padding:.01rem .3rem .01rem 0;line-height:1.1}
.sheet .big{font-size:10.5pt}
.sheet .range{display:inline;font-size:9pt}
.sheet caption,.sheet small,.sheet .soft{font-size:8pt}
.sheet caption{padding:0}
.sheet .two ul{font-size:8.5pt;padding-left:.9rem}
.sheet .flow{columns:2;column-gap:5mm}
.sheet .steps{margin:.1rem 0}
.sheet .flow h2{margin-top:.2rem}
.sheet .steps li{padding:.1rem 0}
.sheet .steps .head,.sheet .steps .head>*{display:inline}
.sheet .steps .head h3 .tick{display:inline-flex}
.sheet .steps h3{font-size:10.5pt}
.sheet .steps .gauge{margin-left:.3rem}
.sheet .steps .amounts{display:inline;margin-left:.3rem}
.sheet .steps .how{margin:0 0 0 .7rem}
.sheet .steps .how .soft{display:inline;line-height:1.1}
.sheet .steps.many .how{display:inline;margin:0 0 0 .3rem}
.sheet .steps.many li{padding:.05rem 0;line-height:1.13}
.sheet .steps.many .how .soft{font-size:7.5pt;line-height:1}
.sheet .label{max-width:none;padding:.15rem .4rem;font-size:9pt}
}
)css";

}  // namespace

std::string_view html_style() { return style; }

}  // namespace standin::cli
