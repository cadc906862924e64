<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="zh_CN" sourcelanguage="en">
<context>
    <name>words</name>
    <message>
        <source>Head and feet</source>
        <translation>头与脚</translation>
    </message>
    <message>
        <source>Neck</source>
        <translation>颈部</translation>
    </message>
    <message>
        <source>Neck base</source>
        <translation>颈根</translation>
    </message>
    <message>
        <source>Trunk</source>
        <translation>躯干</translation>
    </message>
    <message>
        <source>Tail base</source>
        <translation>尾根</translation>
    </message>
    <message>
        <source>Upper arm, thigh</source>
        <translation>上臂、大腿</translation>
    </message>
    <message>
        <source>Forearm, shank</source>
        <translation>前臂、小腿</translation>
    </message>
    <message>
        <source>Lean: tail as the least seen in living reptiles</source>
        <translation>瘦：尾部取现生爬行动物的最小值</translation>
    </message>
    <message>
        <source>Usual: tail as often in living reptiles</source>
        <translation>一般：尾部如现生爬行动物常见</translation>
    </message>
    <message>
        <source>Full: tail as in crocodiles</source>
        <translation>丰满：尾部如鳄类</translation>
    </message>
    <message>
        <source>Click the place.</source>
        <translation>点按该位置。</translation>
    </message>
    <message>
        <source>Click at least three places round it; Backspace takes the last one back.</source>
        <translation>在其周围点按至少三处；退格键撤回最后一处。</translation>
    </message>
    <message>
        <source>Brush the rounded surface; with Ctrl the brush takes away.</source>
        <translation>刷出圆曲的表面；按 Ctrl 则擦去。</translation>
    </message>
    <message>
        <source>Brush the flat surface up to its rim; with Ctrl the brush takes away.</source>
        <translation>把平坦的表面刷到边缘；按 Ctrl 则擦去。</translation>
    </message>
    <message>
        <source>Shaded</source>
        <translation>明暗</translation>
    </message>
    <message>
        <source>Bones in light, no lines, no ground: to paint over</source>
        <translation>受光的骨骼，无线条、无地面：供覆绘</translation>
    </message>
    <message>
        <source>Shadow</source>
        <translation>投影</translation>
    </message>
    <message>
        <source>What the bones take from the light on the ground: a layer to multiply</source>
        <translation>骨骼在地面上遮去的光：作正片叠底图层</translation>
    </message>
    <message>
        <source>Outline</source>
        <translation>轮廓线</translation>
    </message>
    <message>
        <source>Lines alone on nothing: to draw along or ink</source>
        <translation>仅有线条，背景透明：供描绘或勾墨</translation>
    </message>
    <message>
        <source>Depth</source>
        <translation>深度</translation>
    </message>
    <message>
        <source>Near is white, far is black, 16 bits: for haze and focus</source>
        <translation>近白远黑，16 位：用于雾气与景深</translation>
    </message>
    <message>
        <source>Direction</source>
        <translation>朝向</translation>
    </message>
    <message>
        <source>Red faces right, green up, blue towards the eye: for other light</source>
        <translation>红朝右、绿朝上、蓝朝向眼睛：用于改换光照</translation>
    </message>
    <message>
        <source>Bones</source>
        <translation>骨骼</translation>
    </message>
    <message>
        <source>One flat colour a bone, with a table: to select them by</source>
        <translation>每块骨骼一种平涂色，附对照表：用于选取</translation>
    </message>
    <message>
        <source>Evidence</source>
        <translation>证据</translation>
    </message>
    <message>
        <source>One flat colour a kind of evidence: found, mirrored, inferred…</source>
        <translation>每类证据一种平涂色：发现、镜像、推断……</translation>
    </message>
    <message>
        <source>Foot</source>
        <translation>足</translation>
    </message>
    <message>
        <source>Which foot: LP1, right fore, ...</source>
        <translation>是哪只脚：LP1、right fore……</translation>
    </message>
    <message>
        <source>Pace</source>
        <translation>步距</translation>
    </message>
    <message>
        <source>From this print to the next one, of the other side, cm</source>
        <translation>从这个足迹到另一侧的下一个足迹，厘米</translation>
    </message>
    <message>
        <source>Next</source>
        <translation>下一步距</translation>
    </message>
    <message>
        <source>From the next print to the one after it, cm</source>
        <translation>从下一个足迹到再下一个足迹，厘米</translation>
    </message>
    <message>
        <source>Stride</source>
        <translation>复步长</translation>
    </message>
    <message>
        <source>From this print to the next one of this side, cm</source>
        <translation>从这个足迹到同侧的下一个足迹，厘米</translation>
    </message>
    <message>
        <source>Length</source>
        <translation>长度</translation>
    </message>
    <message>
        <source>Of the print, cm</source>
        <translation>足迹的长度，厘米</translation>
    </message>
    <message>
        <source>Gauge</source>
        <translation>行迹宽</translation>
    </message>
    <message>
        <source>From left to right across the direction of travel, cm</source>
        <translation>垂直于行进方向从左到右的距离，厘米</translation>
    </message>
    <message>
        <source>Ahead</source>
        <translation>前置</translation>
    </message>
    <message>
        <source>Fore prints: centre ahead of the hind print of its side and number, cm</source>
        <translation>前足迹：其中心超前于同侧同号后足迹的距离，厘米</translation>
    </message>
    <message>
        <source>Lift the %1</source>
        <translation>抬起%1</translation>
    </message>
    <message>
        <source>Plant the %1</source>
        <translation>放下%1</translation>
    </message>
    <message>
        <source>Plant the feet</source>
        <translation>双足落地</translation>
    </message>
    <message>
        <source>Place the shoulder blades</source>
        <translation>放置肩胛骨</translation>
    </message>
    <message>
        <source>the leg is stretched out</source>
        <translation>腿已伸直</translation>
    </message>
    <message>
        <source>stopped by %1</source>
        <translation>受 %1 限制</translation>
    </message>
    <message>
        <source>%1 %2 from its place, %3</source>
        <translation>%1 离应有位置 %2，%3</translation>
    </message>
    <message>
        <source> · Esc puts it back</source>
        <translation> · 按 Esc 放回原处</translation>
    </message>
    <message>
        <source>Drag empty space to turn the view · wheel zooms · middle button moves</source>
        <translation>拖动空白处以转动视图 · 滚轮缩放 · 中键移动</translation>
    </message>
    <message>
        <source> · Shift lateral · Alt twist</source>
        <translation> · Shift 侧弯 · Alt 扭转</translation>
    </message>
    <message>
        <source>left </source>
        <translation>左</translation>
    </message>
    <message>
        <source>right </source>
        <translation>右</translation>
    </message>
    <message>
        <source>jaw</source>
        <translation>下颌</translation>
    </message>
    <message>
        <source>head</source>
        <translation>头部</translation>
    </message>
    <message>
        <source>neck</source>
        <translation>颈部</translation>
    </message>
    <message>
        <source>trunk</source>
        <translation>躯干</translation>
    </message>
    <message>
        <source>tail</source>
        <translation>尾部</translation>
    </message>
    <message>
        <source>forelimb</source>
        <translation>前肢</translation>
    </message>
    <message>
        <source>forefoot</source>
        <translation>前足</translation>
    </message>
    <message>
        <source>hindlimb</source>
        <translation>后肢</translation>
    </message>
    <message>
        <source>hindfoot</source>
        <translation>后足</translation>
    </message>
    <message>
        <source>column</source>
        <translation>脊柱</translation>
    </message>
    <message>
        <source>, stopped by %1</source>
        <translation>，受 %1 限制</translation>
    </message>
    <message numerus="yes">
        <source> and %n more</source>
        <translation>
            <numerusform>等 %n 个</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 more</source>
        <translation>另有 %1 个</translation>
    </message>
    <message>
        <source>past the range at %1</source>
        <translation>在 %1 处越过范围</translation>
    </message>
    <message>
        <source>%1 short</source>
        <translation>差 %1</translation>
    </message>
    <message>
        <source>Drag to move the %1 · Shift lifts it straight up · Alt bends the leg</source>
        <translation>拖动以移动%1 · 按 Shift 垂直抬起 · 按 Alt 弯曲腿</translation>
    </message>
    <message>
        <source>Drag to move the trunk over its planted feet · Shift tilts it about the hips</source>
        <translation>拖动以在落地的脚上方移动躯干 · 按 Shift 绕髋部倾斜</translation>
    </message>
    <message>
        <source>Drag to raise or lower the front of the trunk over its planted feet · vertebrae bend the back</source>
        <translation>拖动以在落地的脚上方升降躯干前部 · 拖动椎骨则弯曲背部</translation>
    </message>
    <message>
        <source>Moving the %1</source>
        <translation>正在移动%1</translation>
    </message>
    <message>
        <source>Moving the trunk over %1 planted feet</source>
        <translation>正在 %1 只落地的脚上方移动躯干</translation>
    </message>
    <message>
        <source>Move the %1</source>
        <translation>移动%1</translation>
    </message>
    <message>
        <source>Move the trunk</source>
        <translation>移动躯干</translation>
    </message>
    <message>
        <source>Lateral flexion</source>
        <translation>侧屈</translation>
    </message>
    <message>
        <source>Axial rotation</source>
        <translation>轴向旋转</translation>
    </message>
    <message>
        <source>Rotation</source>
        <translation>旋转</translation>
    </message>
    <message>
        <source>inward +</source>
        <translation>向内 +</translation>
    </message>
    <message>
        <source>left +</source>
        <translation>左 +</translation>
    </message>
    <message>
        <source>left side up +</source>
        <translation>左侧抬起 +</translation>
    </message>
    <message>
        <source>%1 on %2</source>
        <translation>%2上的%1</translation>
    </message>
    <message>
        <source>no limits known</source>
        <translation>没有已知的限度</translation>
    </message>
    <message>
        <source>no angle is within range</source>
        <translation>没有角度在活动范围内</translation>
    </message>
    <message>
        <source>held at %1</source>
        <translation>固定于 %1</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 到 %2</translation>
    </message>
    <message>
        <source>The other two angles leave no room here.</source>
        <translation>另外两个角度在此没有留下余地。</translation>
    </message>
    <message>
        <source>± %1</source>
        <translation>± %1</translation>
    </message>
    <message>
        <source>+ left, − right: %1</source>
        <translation>+ 左，− 右：%1</translation>
    </message>
    <message>
        <source>+ right, − left: %1</source>
        <translation>+ 右，− 左：%1</translation>
    </message>
    <message>
        <source>+ %1
− %2</source>
        <translation>+ %1
− %2</translation>
    </message>
    <message>
        <source>%1 to %2: %3</source>
        <translation>%1到 %2：%3</translation>
    </message>
    <message>
        <source>These bones do not move against each other.</source>
        <translation>这些骨骼之间没有相对运动。</translation>
    </message>
    <message>
        <source>Not assessed: the facets of one side are not known.</source>
        <translation>未评估：一侧的关节面未知。</translation>
    </message>
    <message>
        <source>Not assessed: no facets meet here and nobody has typed limits.</source>
        <translation>未评估：这里没有关节面相接，也无人给定限度。</translation>
    </message>
    <message>
        <source>No facets meet here. The limits are typed: %1.</source>
        <translation>此处没有关节面相接。限度为给定：%1。</translation>
    </message>
    <message>
        <source>preserved</source>
        <translation>已保存</translation>
    </message>
    <message>
        <source>deformed</source>
        <translation>已变形</translation>
    </message>
    <message>
        <source>mirrored</source>
        <translation>镜像</translation>
    </message>
    <message>
        <source>scaled</source>
        <translation>按比例</translation>
    </message>
    <message>
        <source>inferred</source>
        <translation>推断</translation>
    </message>
    <message>
        <source>femur</source>
        <translation>股骨</translation>
    </message>
    <message>
        <source>humerus</source>
        <translation>肱骨</translation>
    </message>
    <message>
        <source>total length along the column</source>
        <translation>沿脊柱的全长</translation>
    </message>
    <message>
        <source>choose a bone</source>
        <translation>选择一块骨骼</translation>
    </message>
    <message>
        <source>%1 triangles, %2 × %3 × %4</source>
        <translation>%1 个三角形，%2 × %3 × %4</translation>
    </message>
    <message>
        <source>joint</source>
        <translation>关节</translation>
    </message>
    <message>
        <source>up</source>
        <translation>上</translation>
    </message>
    <message>
        <source>left</source>
        <translation>左</translation>
    </message>
    <message>
        <source>rotation</source>
        <translation>旋转</translation>
    </message>
    <message>
        <source>zygapophyseal overlap</source>
        <translation>关节面重叠</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1：%2</translation>
    </message>
    <message>
        <source>dorsal</source>
        <translation>背侧</translation>
    </message>
    <message>
        <source>ventral</source>
        <translation>腹侧</translation>
    </message>
    <message>
        <source>right</source>
        <translation>右</translation>
    </message>
    <message>
        <source>left up</source>
        <translation>左侧抬起</translation>
    </message>
    <message>
        <source>right up</source>
        <translation>右侧抬起</translation>
    </message>
    <message>
        <source>Dorsal / ventral</source>
        <translation>背 / 腹</translation>
    </message>
    <message>
        <source>Left / right</source>
        <translation>左 / 右</translation>
    </message>
    <message>
        <source>%1  %2 · %3</source>
        <translation>%1  %2 · %3</translation>
    </message>
    <message>
        <source>%1  %2 (limit %3) · %4</source>
        <translation>%1  %2（限度 %3）· %4</translation>
    </message>
    <message>
        <source>these bones do not move against each other</source>
        <translation>这些骨骼之间没有相对运动</translation>
    </message>
    <message>
        <source>not assessed: the facets of one bone are missing</source>
        <translation>未评估：一块骨骼缺少关节面</translation>
    </message>
    <message>
        <source>not assessed: no facets and no typed limits</source>
        <translation>未评估：没有关节面，也没有给定限度</translation>
    </message>
    <message>
        <source>%1 (limit %2)</source>
        <translation>%1（限度 %2）</translation>
    </message>
    <message>
        <source>%1 inside</source>
        <translation>内侧余量 %1</translation>
    </message>
    <message>
        <source>%1 outside</source>
        <translation>超出 %1</translation>
    </message>
    <message>
        <source>Sculpting bones, %1</source>
        <translation>正在塑形骨骼，%1</translation>
    </message>
    <message>
        <source>Drop a measurement table or a project here</source>
        <translation>将测量表或项目拖到此处</translation>
    </message>
    <message>
        <source>or open the sample from the File menu to see a whole animal</source>
        <translation>或从“文件”菜单打开样本，查看整只动物</translation>
    </message>
    <message>
        <source>%1 high</source>
        <translation>高 %1</translation>
    </message>
    <message>
        <source>%1 ahead</source>
        <translation>向前 %1</translation>
    </message>
    <message>
        <source>%1; %2</source>
        <translation>%1；%2</translation>
    </message>
    <message>
        <source>ventral – dorsal, °</source>
        <translation>腹 – 背，°</translation>
    </message>
    <message>
        <source>right – left, °</source>
        <translation>右 – 左，°</translation>
    </message>
    <message>
        <source>rotation right – left, °</source>
        <translation>旋转 右 – 左，°</translation>
    </message>
    <message>
        <source>bar: range from neutral; dotted: typed limits; mark: present angle, triangle where out of range</source>
        <translation>条：自中性位的范围；点线：键入的限度；标记：当前角度，超出范围为三角形</translation>
    </message>
    <message>
        <source>ahead of the neck’s base, m</source>
        <translation>颈根之前，米</translation>
    </message>
    <message>
        <source>over the ground, m</source>
        <translation>离地，米</translation>
    </message>
    <message>
        <source>%1: neck %2</source>
        <translation>%1：颈 %2</translation>
    </message>
    <message>
        <source>%1: %2, neck %3</source>
        <translation>%1：%2，颈部 %3</translation>
    </message>
    <message>
        <source>%1 to %2 ahead of the fore foot</source>
        <translation>前足之前 %1 到 %2</translation>
    </message>
    <message>
        <source>%1 to %2 ahead of the neck’s base</source>
        <translation>颈根之前 %1 到 %2</translation>
    </message>
    <message>
        <source>%1, variation %2</source>
        <translation>%1，变异 %2</translation>
    </message>
    <message>
        <source>stress, MPa</source>
        <translation>应力，MPa</translation>
    </message>
    <message>
        <source>neutral</source>
        <translation>中性</translation>
    </message>
    <message>
        <source>highest</source>
        <translation>最高</translation>
    </message>
    <message>
        <source>lowest</source>
        <translation>最低</translation>
    </message>
    <message>
        <source>present</source>
        <translation>当前</translation>
    </message>
    <message>
        <source>length</source>
        <translation>长度</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1，%2</translation>
    </message>
    <message>
        <source>snout over the ground, m</source>
        <translation>吻端离地，米</translation>
    </message>
    <message>
        <source>slope of the neck, °</source>
        <translation>颈部坡度，°</translation>
    </message>
    <message numerus="yes">
        <source>curve: %n samples; bar: 5 to 95 %; line: half of them; diamond: the table as it is</source>
        <translation>
            <numerusform>曲线：%n 次抽样；条：5 到 95 %；线：其中一半；菱形：表格原值</numerusform>
        </translation>
    </message>
    <message>
        <source>at the heart, mmHg: column of blood, perfusion of the head</source>
        <translation>心脏处，mmHg：血柱、头部灌注</translation>
    </message>
    <message>
        <source>upright sauropod in one published view</source>
        <translation>一种已发表观点中直立颈部的蜥脚类</translation>
    </message>
    <message>
        <source>snout to tail tip along the column</source>
        <translation>沿脊柱从吻端到尾端</translation>
    </message>
    <message>
        <source>skull</source>
        <translation>头骨</translation>
    </message>
    <message>
        <source>sacrum</source>
        <translation>荐部</translation>
    </message>
    <message>
        <source>Lengths of the column are sums of functional lengths, without condyles.</source>
        <translation>脊柱长度为功能长度之和，不含关节髁。</translation>
    </message>
    <message>
        <source>m</source>
        <translation>米</translation>
    </message>
    <message>
        <source>region</source>
        <translation>区域</translation>
    </message>
    <message>
        <source>source</source>
        <translation>出处</translation>
    </message>
    <message>
        <source>bones</source>
        <translation>骨数</translation>
    </message>
    <message>
        <source>no source given</source>
        <translation>未给出出处</translation>
    </message>
    <message>
        <source>Specimen</source>
        <translation>标本</translation>
    </message>
    <message>
        <source>%1: %2 cervical, %3 dorsal, %4 sacral and %5 caudal vertebrae; limbs and skull on the plan of a %6.</source>
        <translation>%1：颈椎 %2、背椎 %3、荐椎 %4、尾椎 %5；四肢和头骨按%6的方案。</translation>
    </message>
    <message>
        <source>Counted as in Lacovara et al. 2014, Sci. Rep. 4:6196.</source>
        <translation>按 Lacovara et al. 2014, Sci. Rep. 4:6196 的方法计数。</translation>
    </message>
    <message>
        <source>%1 of their length</source>
        <translation>其长度的 %1</translation>
    </message>
    <message>
        <source>Assumptions</source>
        <translation>假设</translation>
    </message>
    <message>
        <source>what is taken for granted</source>
        <translation>所作的假设</translation>
    </message>
    <message>
        <source>value</source>
        <translation>值</translation>
    </message>
    <message>
        <source>minimum zygapophyseal overlap, by length</source>
        <translation>关节突最小重叠，按长度</translation>
    </message>
    <message>
        <source>minimum zygapophyseal overlap, by area</source>
        <translation>关节突最小重叠，按面积</translation>
    </message>
    <message>
        <source>neutral articulation</source>
        <translation>中性关节位</translation>
    </message>
    <message>
        <source>slope of a vertebra, measured by</source>
        <translation>椎骨倾角，量取依据</translation>
    </message>
    <message>
        <source>facets may interpenetrate by</source>
        <translation>关节面可相互嵌入</translation>
    </message>
    <message>
        <source>facets may separate by</source>
        <translation>关节面可分离</translation>
    </message>
    <message>
        <source>bones may interpenetrate by</source>
        <translation>骨可相互嵌入</translation>
    </message>
    <message>
        <source>near-limit margin</source>
        <translation>接近限度的余量</translation>
    </message>
    <message>
        <source>cartilage in neck, trunk and tail</source>
        <translation>颈部、躯干和尾部的软骨</translation>
    </message>
    <message>
        <source>cartilage in the neck</source>
        <translation>颈部软骨</translation>
    </message>
    <message>
        <source>cartilage in the trunk</source>
        <translation>躯干软骨</translation>
    </message>
    <message>
        <source>cartilage in the tail</source>
        <translation>尾部软骨</translation>
    </message>
    <message>
        <source>bones settle when they turn, share of the cartilage's thickness</source>
        <translation>骨骼转动时的沉降，占软骨厚度的份额</translation>
    </message>
    <message>
        <source>At least half of the facet's length covered is the common published rule (Stevens &amp; Parrish 1999, Science 284:798); tested on ostriches it does not convey their flexibility (Cobley, Rayfield &amp; Barrett 2013, PLoS ONE 8(8):e72187), and facets of living turkeys slide almost to disarticulation (Kambic, Biewener &amp; Pierce 2017, Front. Zool. 14:37). No amount of cartilage is known to be right.</source>
        <translation>关节面至少有一半长度重叠是常见的已发表规则（Stevens &amp; Parrish 1999, Science 284:798）；以鸵鸟检验，该规则未能反映其灵活性（Cobley, Rayfield &amp; Barrett 2013, PLoS ONE 8(8):e72187），现生火鸡的关节面可滑动到几乎脱节（Kambic, Biewener &amp; Pierce 2017, Front. Zool. 14:37）。尚不知多少软骨才算正确。</translation>
    </message>
    <message>
        <source>a scan beside inferred facets</source>
        <translation>扫描与推断的关节面相邻</translation>
    </message>
    <message>
        <source>assessed against an inferred neighbour</source>
        <translation>对照推断的邻骨评估</translation>
    </message>
    <message>
        <source>not assessed</source>
        <translation>未评估</translation>
    </message>
    <message>
        <source>Mass and balance</source>
        <translation>质量与平衡</translation>
    </message>
    <message>
        <source>By volume: %1.</source>
        <translation>按体积：%1。</translation>
    </message>
    <message>
        <source>By the circumferences of humerus and femur: %1.</source>
        <translation>按肱骨与股骨周长：%1。</translation>
    </message>
    <message>
        <source>The fore feet carry %1 of the weight.</source>
        <translation>前足承担 %1 的重量。</translation>
    </message>
    <message>
        <source>Volume: hulls around the bones x %1 x density; %2.</source>
        <translation>体积：骨骼凸包 × %1 × 密度；%2。</translation>
    </message>
    <message>
        <source>Circumference: %1, %2.</source>
        <translation>周长：%1，%2。</translation>
    </message>
    <message>
        <source>Both are estimates.</source>
        <translation>两者都是估计。</translation>
    </message>
    <message>
        <source>en</source>
        <translation>zh-CN</translation>
    </message>
    <message>
        <source>The skeleton as posed, left lateral view</source>
        <translation>摆好姿态的骨架，左侧视</translation>
    </message>
    <message>
        <source>%1. Not an engineering document; local codes and licensed practice decide.</source>
        <translation>%1。并非工程文件；以当地规范和持证从业者的意见为准。</translation>
    </message>
    <message>
        <source>none</source>
        <translation>无</translation>
    </message>
    <message>
        <source>reading</source>
        <translation>读数</translation>
    </message>
    <message>
        <source>Claim %1</source>
        <translation>论断 %1</translation>
    </message>
    <message>
        <source>what stands in the way, and what it would take</source>
        <translation>阻碍所在，以及所需条件</translation>
    </message>
    <message>
        <source>Pose</source>
        <translation>姿态</translation>
    </message>
    <message>
        <source>Pose: %1.</source>
        <translation>姿态：%1。</translation>
    </message>
    <message>
        <source>Left lateral view. Preserved bones are warm, mirrored and scaled ones darker, inferred ones grey.</source>
        <translation>左侧视。已保存的骨为暖色，镜像和缩放的较暗，推断的为灰色。</translation>
    </message>
    <message>
        <source>snout over the ground</source>
        <translation>吻端离地</translation>
    </message>
    <message>
        <source>hip over the ground</source>
        <translation>髋离地</translation>
    </message>
    <message>
        <source>shoulder over the ground</source>
        <translation>肩离地</translation>
    </message>
    <message>
        <source>glenoacetabular distance</source>
        <translation>肩臼髋臼距</translation>
    </message>
    <message>
        <source>trunk, rising forwards</source>
        <translation>躯干，向前上升</translation>
    </message>
    <message>
        <source>neck base, rising forwards</source>
        <translation>颈基，向前上升</translation>
    </message>
    <message>
        <source>tail base, rising backwards</source>
        <translation>尾基，向后上升</translation>
    </message>
    <message>
        <source>Slope of the neck base: hindmost cervical, by its %1 (Taylor &amp; Wedel 2022).</source>
        <translation>颈根倾角：最后一节颈椎，按其%1（Taylor &amp; Wedel 2022）。</translation>
    </message>
    <message>
        <source>Findings</source>
        <translation>判定结果</translation>
    </message>
    <message>
        <source>Of %1 joints %2 are out of range, %3 near a limit, %4 within range and %5 not assessed.</source>
        <translation>%1 个关节中，%2 个超出范围，%3 个接近限度，%4 个在范围内，%5 个未评估。</translation>
    </message>
    <message>
        <source>Every joint that can be assessed is within its range.</source>
        <translation>每个可评估的关节都在其范围内。</translation>
    </message>
    <message>
        <source>verdict</source>
        <translation>判定</translation>
    </message>
    <message>
        <source>why</source>
        <translation>原因</translation>
    </message>
    <message>
        <source>Contact between bones away from their joints is not part of this report.</source>
        <translation>骨与骨在关节之外的接触不在本报告之内。</translation>
    </message>
    <message>
        <source>Claims</source>
        <translation>论断</translation>
    </message>
    <message>
        <source>No claims were put to this animal. They are typed into the Claims panel.</source>
        <translation>尚未对这只动物提出论断。论断在“论断”面板中键入。</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>%1. %2. %3</source>
        <translation>%1. %2。%3</translation>
    </message>
    <message>
        <source>%1. %2 (%4). %3</source>
        <translation>%1. %2（%4）。%3</translation>
    </message>
    <message>
        <source>Limits of the neck</source>
        <translation>颈部的限度</translation>
    </message>
    <message>
        <source>Degrees from neutral, one motion at a time, the joint's other angles at zero.</source>
        <translation>自中性位起的度数，每次只做一种运动，该关节其他角度为零。</translation>
    </message>
    <message>
        <source>dorsiflexion</source>
        <translation>背屈</translation>
    </message>
    <message>
        <source>ventriflexion</source>
        <translation>腹屈</translation>
    </message>
    <message>
        <source>what ends dorsiflexion</source>
        <translation>止住背屈者</translation>
    </message>
    <message>
        <source>Ranges are of bare bones. They may be off by 5 degrees a joint (Kuznetsov &amp; Tereschenko 2010), and soft tissue may lessen them or not (Cobley, Rayfield &amp; Barrett 2013; Hutson &amp; Hutson 2012).</source>
        <translation>范围只就裸骨而言。每个关节可能相差 5 度（Kuznetsov &amp; Tereschenko 2010），软组织可能减小它们，也可能不会（Cobley, Rayfield &amp; Barrett 2013; Hutson &amp; Hutson 2012）。</translation>
    </message>
    <message>
        <source>Angles of every joint</source>
        <translation>各关节的角度</translation>
    </message>
    <message>
        <source>Degrees from the neutral articulation: dorsiflexion, left and left side up are positive in the column; flexion, abduction and long-axis rotation in the limbs. Joints at zero that are within range are left out.</source>
        <translation>自中性关节位起的度数：脊柱中背屈、向左和左侧抬高为正；四肢中屈曲、外展和长轴旋转为正。角度为零且在范围内的关节略去。</translation>
    </message>
    <message>
        <source>dorsiflexion or flexion</source>
        <translation>背屈或屈曲</translation>
    </message>
    <message>
        <source>left or abduction</source>
        <translation>向左或外展</translation>
    </message>
    <message>
        <source>axial rotation</source>
        <translation>轴向旋转</translation>
    </message>
    <message>
        <source>Present pose: what each joint of the neck carries.</source>
        <translation>当前姿态：颈部每个关节的承载。</translation>
    </message>
    <message>
        <source>moment</source>
        <translation>力矩</translation>
    </message>
    <message>
        <source>lever</source>
        <translation>力臂</translation>
    </message>
    <message>
        <source>force on the joint</source>
        <translation>关节所受的力</translation>
    </message>
    <message>
        <source>stress</source>
        <translation>应力</translation>
    </message>
    <message>
        <source>centrum and spines</source>
        <translation>椎体与神经棘</translation>
    </message>
    <message>
        <source>measured</source>
        <translation>实测</translation>
    </message>
    <message>
        <source>This could not be worked out: %1</source>
        <translation>无法算出：%1</translation>
    </message>
    <message>
        <source>Side view to scale: what the snout reaches with every joint of neck and head inside its range.</source>
        <translation>按比例的侧视：颈和头的每个关节都在范围内时吻端可及之处。</translation>
    </message>
    <message>
        <source>Stress of the joints of the neck in each posture, the neck’s base to the right.</source>
        <translation>各姿态中颈部关节的应力，颈根在右。</translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation>注意</translation>
    </message>
    <message>
        <source>Bones permit a pose or they do not; that an animal took a pose is another matter.</source>
        <translation>骨骼允许某种姿态或不允许；动物是否曾取该姿态是另一回事。</translation>
    </message>
    <message>
        <source>Everything above holds under the assumptions stated, and changes with them.</source>
        <translation>以上一切都以所述假设为前提，并随之改变。</translation>
    </message>
    <message>
        <source>Speeds from tracks on soft ground are too high (Prescott et al. 2025, Biol. Lett. 21:20250191).</source>
        <translation>由软地足迹得出的速度偏高（Prescott et al. 2025, Biol. Lett. 21:20250191）。</translation>
    </message>
    <message>
        <source>Claims put to the bones; pose: %1</source>
        <translation>对骨骼提出的论断；姿态：%1</translation>
    </message>
    <message>
        <source>What the bones support; pose: %1</source>
        <translation>骨骼所支持的；姿态：%1</translation>
    </message>
    <message>
        <source>mirrored or scaled</source>
        <translation>镜像或按比例</translation>
    </message>
    <message>
        <source>restored</source>
        <translation>复原</translation>
    </message>
    <message>
        <source>the page could not be made</source>
        <translation>无法生成页面</translation>
    </message>
    <message>
        <source>there is not enough memory for %1 x %2 pixels; choose a smaller width</source>
        <translation>内存不足以容纳 %1 x %2 像素；请选择较小的宽度</translation>
    </message>
    <message>
        <source>the page could not be written as PNG</source>
        <translation>无法把页面写成 PNG</translation>
    </message>
    <message>
        <source>a sheet ends in .pdf, .svg or .png</source>
        <translation>图纸的扩展名是 .pdf、.svg 或 .png</translation>
    </message>
    <message>
        <source>At %1 the drawing does not fit on this paper; the largest round scale that fits is %2. Choose that, a larger paper, or another layout.</source>
        <translation>在 %1 下图画放不进这张纸；能放下的最大整数比例是 %2。请选择该比例、更大的纸或另一种版式。</translation>
    </message>
    <message>
        <source>The specimen has no neck to draw.</source>
        <translation>该标本没有可画的颈部。</translation>
    </message>
    <message>
        <source>cranial</source>
        <translation>颅侧</translation>
    </message>
    <message>
        <source>caudal</source>
        <translation>尾侧</translation>
    </message>
    <message>
        <source>left lateral</source>
        <translation>左侧</translation>
    </message>
    <message>
        <source>A plate needs bones: name some, such as C5 or manus.L, with commas between them; '%1' names none that can be drawn.</source>
        <translation>骨骼图版需要骨骼：请写出若干，如 C5 或 manus.L，以逗号分隔；“%1”没有指出任何可以绘制的骨骼。</translation>
    </message>
    <message>
        <source>There are no bones to draw.</source>
        <translation>没有可画的骨骼。</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1（%2）</translation>
    </message>
    <message>
        <source>joint within range</source>
        <translation>关节在范围内</translation>
    </message>
    <message>
        <source>joint near limit</source>
        <translation>关节接近限度</translation>
    </message>
    <message>
        <source>joint out of range</source>
        <translation>关节超出范围</translation>
    </message>
    <message>
        <source>joint not assessed</source>
        <translation>关节未评估</translation>
    </message>
    <message>
        <source>%1 as posed</source>
        <translation>%1（按此姿态）</translation>
    </message>
    <message>
        <source>shoulder</source>
        <translation>肩</translation>
    </message>
    <message>
        <source>hip</source>
        <translation>髋</translation>
    </message>
    <message>
        <source>Left lateral view</source>
        <translation>左侧视图</translation>
    </message>
    <message>
        <source>Left lateral, cranial and dorsal views (first angle)</source>
        <translation>左侧、颅侧与背侧视图（第一角投影）</translation>
    </message>
    <message>
        <source>What is known: left lateral view</source>
        <translation>已知部分：左侧视图</translation>
    </message>
    <message>
        <source>Plate: cranial, left lateral, caudal, dorsal and ventral views</source>
        <translation>骨骼图版：颅侧、左侧、尾侧、背侧与腹侧视图</translation>
    </message>
    <message>
        <source>Neck, left lateral view</source>
        <translation>颈部，左侧视图</translation>
    </message>
    <message>
        <source>At least %1 zygapophyseal overlap (by length).</source>
        <translation>关节突重叠至少 %1（按长度）。</translation>
    </message>
    <message>
        <source>At least %1 zygapophyseal overlap (by area).</source>
        <translation>关节突重叠至少 %1（按面积）。</translation>
    </message>
    <message>
        <source>Cartilage %1.</source>
        <translation>软骨 %1。</translation>
    </message>
    <message>
        <source>Cartilage: neck %1, trunk %2, tail %3.</source>
        <translation>软骨：颈 %1，躯干 %2，尾 %3。</translation>
    </message>
    <message>
        <source>Facets may interpenetrate by %1 and separate by %2 of their length.</source>
        <translation>关节面可相互嵌入其长度的 %1，可分离 %2。</translation>
    </message>
    <message>
        <source>Bones settle by up to %1 of the cartilage's thickness when they turn.</source>
        <translation>骨骼转动时沉降至多为软骨厚度的 %1。</translation>
    </message>
    <message>
        <source>Neutral: facets in greatest contact.</source>
        <translation>中性：关节面接触最多。</translation>
    </message>
    <message>
        <source>Neutral: facets in contact, centrum faces parallel.</source>
        <translation>中性：关节面相接，椎体端面平行。</translation>
    </message>
    <message>
        <source>Along the column</source>
        <translation>沿脊柱</translation>
    </message>
    <message>
        <source>Tail</source>
        <translation>尾部</translation>
    </message>
    <message>
        <source>Hip height</source>
        <translation>髋高</translation>
    </message>
    <message>
        <source>Shoulder height</source>
        <translation>肩高</translation>
    </message>
    <message>
        <source>Head height</source>
        <translation>头高</translation>
    </message>
    <message>
        <source>No source is given.</source>
        <translation>未给出出处。</translation>
    </message>
    <message numerus="yes">
        <source>and %n more</source>
        <translation>
            <numerusform>及另外 %n 个</numerusform>
        </translation>
    </message>
    <message>
        <source>Sources: %1.</source>
        <translation>出处：%1。</translation>
    </message>
    <message>
        <source>%1: %2.</source>
        <translation>%1：%2。</translation>
    </message>
    <message>
        <source>%1 %2, inferred</source>
        <translation>%1 %2，推断</translation>
    </message>
    <message>
        <source>%1  %2 (%3, %4)</source>
        <translation>%1  %2（%3，%4）</translation>
    </message>
    <message>
        <source>%1  %2 (%3, %4; %5)</source>
        <translation>%1  %2（%3，%4；%5）</translation>
    </message>
    <message>
        <source>The dark body is a guide by program defaults, not anatomy.</source>
        <translation>深色体形是按程序默认值做的参考，不是解剖结构。</translation>
    </message>
    <message>
        <source>Measures</source>
        <translation>量度</translation>
    </message>
    <message>
        <source>Sizes</source>
        <translation>尺寸</translation>
    </message>
    <message>
        <source>Evidence and cautions</source>
        <translation>证据与提醒</translation>
    </message>
    <message>
        <source>%1 could not be worked out: %2</source>
        <translation>%1无法算出：%2</translation>
    </message>
    <message>
        <source>Head</source>
        <translation>头部</translation>
    </message>
    <message>
        <source>Sacrum</source>
        <translation>荐部</translation>
    </message>
    <message>
        <source>Ribs</source>
        <translation>肋骨</translation>
    </message>
    <message>
        <source>Chevrons</source>
        <translation>脉弧</translation>
    </message>
    <message>
        <source>Shoulder</source>
        <translation>肩部</translation>
    </message>
    <message>
        <source>Forelimb</source>
        <translation>前肢</translation>
    </message>
    <message>
        <source>Manus</source>
        <translation>前足</translation>
    </message>
    <message>
        <source>Pelvis</source>
        <translation>骨盆</translation>
    </message>
    <message>
        <source>Hindlimb</source>
        <translation>后肢</translation>
    </message>
    <message>
        <source>Pes</source>
        <translation>后足</translation>
    </message>
    <message>
        <source>cervical vertebrae</source>
        <translation>颈椎</translation>
    </message>
    <message>
        <source>dorsal vertebrae</source>
        <translation>背椎</translation>
    </message>
    <message>
        <source>lumbar vertebrae</source>
        <translation>腰椎</translation>
    </message>
    <message>
        <source>sacral vertebrae</source>
        <translation>荐椎</translation>
    </message>
    <message>
        <source>caudal vertebrae</source>
        <translation>尾椎</translation>
    </message>
    <message>
        <source>length with condyle</source>
        <translation>含椎突的长度</translation>
    </message>
    <message>
        <source>cotyle height</source>
        <translation>椎窝高</translation>
    </message>
    <message>
        <source>cotyle width</source>
        <translation>椎窝宽</translation>
    </message>
    <message>
        <source>spine height</source>
        <translation>神经棘高</translation>
    </message>
    <message>
        <source>depth of the bifid spine</source>
        <translation>分叉棘的深度</translation>
    </message>
    <message>
        <source>diapophysis width</source>
        <translation>横突宽</translation>
    </message>
    <message>
        <source>facet length</source>
        <translation>关节面长</translation>
    </message>
    <message>
        <source>facet width</source>
        <translation>关节面宽</translation>
    </message>
    <message>
        <source>facet height</source>
        <translation>关节面高</translation>
    </message>
    <message>
        <source>facet spread</source>
        <translation>关节面间距</translation>
    </message>
    <message>
        <source>facet tilt</source>
        <translation>关节面倾角</translation>
    </message>
    <message>
        <source>postzygapophyseal facet length</source>
        <translation>后关节突关节面长</translation>
    </message>
    <message>
        <source>facet turn</source>
        <translation>关节面转角</translation>
    </message>
    <message>
        <source>wedging angle</source>
        <translation>楔形角</translation>
    </message>
    <message>
        <source>height</source>
        <translation>高</translation>
    </message>
    <message>
        <source>width</source>
        <translation>宽</translation>
    </message>
    <message>
        <source>proximal width</source>
        <translation>近端宽</translation>
    </message>
    <message>
        <source>shaft width</source>
        <translation>骨干宽</translation>
    </message>
    <message>
        <source>distal width</source>
        <translation>远端宽</translation>
    </message>
    <message>
        <source>minimum shaft circumference</source>
        <translation>骨干最小周长</translation>
    </message>
    <message>
        <source>facet offset</source>
        <translation>关节面偏移</translation>
    </message>
    <message>
        <source>facet pitch</source>
        <translation>关节面俯仰角</translation>
    </message>
    <message>
        <source>facet radius of curvature</source>
        <translation>关节面曲率半径</translation>
    </message>
    <message>
        <source>postzygapophyseal facet width</source>
        <translation>后关节突关节面宽</translation>
    </message>
    <message>
        <source>postzygapophyseal facet height</source>
        <translation>后关节突关节面高</translation>
    </message>
    <message>
        <source>postzygapophyseal facet spread</source>
        <translation>后关节突关节面间距</translation>
    </message>
    <message>
        <source>postzygapophyseal facet tilt</source>
        <translation>后关节突关节面倾角</translation>
    </message>
    <message>
        <source>postzygapophyseal facet offset</source>
        <translation>后关节突关节面偏移</translation>
    </message>
    <message>
        <source>postzygapophyseal facet pitch</source>
        <translation>后关节突关节面俯仰角</translation>
    </message>
    <message>
        <source>postzygapophyseal facet radius of curvature</source>
        <translation>后关节突关节面曲率半径</translation>
    </message>
    <message>
        <source>preserved, deformed</source>
        <translation>已保存，已变形</translation>
    </message>
    <message>
        <source>scaled from another specimen</source>
        <translation>由另一标本按比例换算</translation>
    </message>
    <message>
        <source>the bone shows it</source>
        <translation>骨骼所示</translation>
    </message>
    <message>
        <source>inferred from living relatives</source>
        <translation>由现生近亲推断</translation>
    </message>
    <message>
        <source>conjecture</source>
        <translation>推测</translation>
    </message>
    <message>
        <source>left prezygapophyseal facet</source>
        <translation>左前关节突关节面</translation>
    </message>
    <message>
        <source>right prezygapophyseal facet</source>
        <translation>右前关节突关节面</translation>
    </message>
    <message>
        <source>left postzygapophyseal facet</source>
        <translation>左后关节突关节面</translation>
    </message>
    <message>
        <source>right postzygapophyseal facet</source>
        <translation>右后关节突关节面</translation>
    </message>
    <message>
        <source>prezygapophyseal facet</source>
        <translation>前关节突关节面</translation>
    </message>
    <message>
        <source>the joint in front is assessed by it</source>
        <translation>据此评定前面的关节</translation>
    </message>
    <message>
        <source>postzygapophyseal facet</source>
        <translation>后关节突关节面</translation>
    </message>
    <message>
        <source>the joint behind is assessed by it</source>
        <translation>据此评定后面的关节</translation>
    </message>
    <message>
        <source>base of the condyle</source>
        <translation>关节髁的基部</translation>
    </message>
    <message>
        <source>rim of the cranial face</source>
        <translation>前端面的边缘</translation>
    </message>
    <message>
        <source>the cranial end of the centrum's axis</source>
        <translation>椎体轴线的前端</translation>
    </message>
    <message>
        <source>rim of the cotyle</source>
        <translation>关节窝的边缘</translation>
    </message>
    <message>
        <source>rim of the caudal face</source>
        <translation>后端面的边缘</translation>
    </message>
    <message>
        <source>the caudal end of the centrum's axis</source>
        <translation>椎体轴线的后端</translation>
    </message>
    <message>
        <source>cranial opening of the neural canal</source>
        <translation>椎管前口</translation>
    </message>
    <message>
        <source>caudal opening of the neural canal</source>
        <translation>椎管后口</translation>
    </message>
    <message>
        <source>the neural canal is taken as level</source>
        <translation>椎管视为水平</translation>
    </message>
    <message>
        <source>top of the neural spine</source>
        <translation>神经棘顶端</translation>
    </message>
    <message>
        <source>lies in the mid-plane and says where up is</source>
        <translation>位于中矢面内，表明何处为上</translation>
    </message>
    <message>
        <source>condyle</source>
        <translation>关节髁</translation>
    </message>
    <message>
        <source>middle of the cranial face</source>
        <translation>前端面的中央</translation>
    </message>
    <message>
        <source>centre of rotation of the joint in front</source>
        <translation>前面关节的旋转中心</translation>
    </message>
    <message>
        <source>cotyle</source>
        <translation>关节窝</translation>
    </message>
    <message>
        <source>middle of the caudal face</source>
        <translation>后端面的中央</translation>
    </message>
    <message>
        <source>centre of rotation of the joint behind</source>
        <translation>后面关节的旋转中心</translation>
    </message>
    <message>
        <source>diapophysis</source>
        <translation>横突关节突</translation>
    </message>
    <message>
        <source>tip of the transverse process, carries the tuberculum</source>
        <translation>横突末端，承托肋结节</translation>
    </message>
    <message>
        <source>parapophysis</source>
        <translation>椎体横突</translation>
    </message>
    <message>
        <source>carries the capitulum of the rib</source>
        <translation>承托肋骨小头</translation>
    </message>
    <message>
        <source>tip of the fused cervical rib</source>
        <translation>愈合颈肋的末端</translation>
    </message>
    <message>
        <source>shows how far the rib reaches</source>
        <translation>表明肋骨伸至何处</translation>
    </message>
    <message>
        <source>most cranial point of the condyle</source>
        <translation>关节髁的最前点</translation>
    </message>
    <message>
        <source>gives the length with condyle</source>
        <translation>给出含关节髁的长度</translation>
    </message>
    <message>
        <source>tuberculum</source>
        <translation>肋结节</translation>
    </message>
    <message>
        <source>articulates with the diapophysis</source>
        <translation>与横突关节突相接</translation>
    </message>
    <message>
        <source>middle</source>
        <translation>中部</translation>
    </message>
    <message>
        <source>the point half-way along that lies farthest out</source>
        <translation>半途中最靠外的一点</translation>
    </message>
    <message>
        <source>tip</source>
        <translation>尾端</translation>
    </message>
    <message>
        <source>the far end of the bone</source>
        <translation>骨骼的远端</translation>
    </message>
    <message>
        <source>tip of the snout</source>
        <translation>吻端</translation>
    </message>
    <message>
        <source>one end of the skull</source>
        <translation>头骨的一端</translation>
    </message>
    <message>
        <source>jaw joint</source>
        <translation>颌关节</translation>
    </message>
    <message>
        <source>where the lower jaw turns</source>
        <translation>下颌转动之处</translation>
    </message>
    <message>
        <source>middle of the orbit</source>
        <translation>眼眶中央</translation>
    </message>
    <message>
        <source>middle of the external naris</source>
        <translation>外鼻孔中央</translation>
    </message>
    <message>
        <source>foramen magnum</source>
        <translation>枕骨大孔</translation>
    </message>
    <message>
        <source>shows how the skull lies</source>
        <translation>表明头骨如何放置</translation>
    </message>
    <message>
        <source>front end of the lower jaw</source>
        <translation>下颌前端</translation>
    </message>
    <message>
        <source>one end of the lower jaw</source>
        <translation>下颌的一端</translation>
    </message>
    <message>
        <source>proximal articular surface</source>
        <translation>近端关节面</translation>
    </message>
    <message>
        <source>centre of rotation of the joint above</source>
        <translation>上方关节的旋转中心</translation>
    </message>
    <message>
        <source>distal articular surface</source>
        <translation>远端关节面</translation>
    </message>
    <message>
        <source>centre of rotation of the joint below</source>
        <translation>下方关节的旋转中心</translation>
    </message>
    <message>
        <source>proximal end</source>
        <translation>近端</translation>
    </message>
    <message>
        <source>one end of the greatest length</source>
        <translation>最大长度的一端</translation>
    </message>
    <message>
        <source>distal end</source>
        <translation>远端</translation>
    </message>
    <message>
        <source>the other end of the greatest length</source>
        <translation>最大长度的另一端</translation>
    </message>
    <message>
        <source>outer end of the sacral rib</source>
        <translation>荐肋外端</translation>
    </message>
    <message>
        <source>mid-line of the chest beside the coracoid</source>
        <translation>乌喙骨旁的胸部中线</translation>
    </message>
    <message>
        <source>proximal end of the shaft</source>
        <translation>骨干近端</translation>
    </message>
    <message>
        <source>distal end of the shaft</source>
        <translation>骨干远端</translation>
    </message>
    <message>
        <source>shows how the shaft runs</source>
        <translation>表明骨干的走向</translation>
    </message>
    <message>
        <source>cranial end of the blade</source>
        <translation>骨板前端</translation>
    </message>
    <message>
        <source>caudal end of the blade</source>
        <translation>骨板后端</translation>
    </message>
    <message>
        <source>dorsal edge of the blade</source>
        <translation>骨板背缘</translation>
    </message>
    <message>
        <source>shows how the blade lies</source>
        <translation>表明骨板如何放置</translation>
    </message>
    <message>
        <source>articular face for the humerus</source>
        <translation>与肱骨相接的关节面</translation>
    </message>
    <message>
        <source>shows how the bone lies</source>
        <translation>表明骨骼如何放置</translation>
    </message>
    <message>
        <source>lowest point of the foot</source>
        <translation>足的最低点</translation>
    </message>
    <message>
        <source>stands on the ground</source>
        <translation>立于地面</translation>
    </message>
    <message>
        <source>the table has no row for %1</source>
        <translation>表中没有 %1 的行</translation>
    </message>
    <message>
        <source>the %2 of %1 has not been filled in</source>
        <translation>%1 的%2尚未填入</translation>
    </message>
    <message>
        <source>a skull needs an atlas (C1) to sit on</source>
        <translation>头骨需要寰椎（C1）来承托</translation>
    </message>
    <message>
        <source>a scapula needs a dorsal vertebra (D1 to D3) to hang from</source>
        <translation>肩胛骨需要一块背椎（D1 至 D3）来悬挂</translation>
    </message>
    <message>
        <source>a pelvis needs the sacral vertebra %1</source>
        <translation>骨盆需要荐椎 %1</translation>
    </message>
    <message>
        <source>the specimen has no %1</source>
        <translation>标本没有 %1</translation>
    </message>
    <message>
        <source>%1 is fused to %2 and has no mesh of its own</source>
        <translation>%1 与 %2 愈合，没有自己的网格</translation>
    </message>
    <message>
        <source>the factor must be more than 0</source>
        <translation>倍数必须大于 0</translation>
    </message>
    <message>
        <source>the landmarks of %1 do not yet say how it lies</source>
        <translation>%1 的标志点尚未表明它如何放置</translation>
    </message>
    <message>
        <source>the cranial centre of rotation of %1 has not been marked</source>
        <translation>%1 的前旋转中心尚未标记</translation>
    </message>
    <message>
        <source>the caudal centre of rotation of %1 has not been marked</source>
        <translation>%1 的后旋转中心尚未标记</translation>
    </message>
    <message>
        <source>the %2 of %1 has not been marked</source>
        <translation>%1 的%2尚未标记</translation>
    </message>
    <message>
        <source>%1 is a paired bone and has no mid-plane</source>
        <translation>%1 是成对的骨骼，没有中矢面</translation>
    </message>
    <message>
        <source>%1 does not lie by its landmarks yet, so that its mid-plane is not known</source>
        <translation>%1 还没有按标志点摆放，因此中矢面未知</translation>
    </message>
    <message>
        <source>%1 is a paired bone: it has no symmetry to go by</source>
        <translation>%1 是成对的骨骼：没有可依据的对称</translation>
    </message>
    <message>
        <source>straightening needs at least two pairs of landmarks</source>
        <translation>校正至少需要两对标志点</translation>
    </message>
    <message>
        <source>the middles of the pairs lie along one line: mark a point of the mid-plane off it</source>
        <translation>各对的中点在一条直线上：请在中矢面上、该直线之外再标一点</translation>
    </message>
    <message>
        <source>the name does not say which side</source>
        <translation>名称未表明是哪一侧</translation>
    </message>
    <message>
        <source>the name gives no number</source>
        <translation>名称没有给出编号</translation>
    </message>
    <message>
        <source>a sacrum in one piece is held by its first vertebra</source>
        <translation>整块荐椎由其第一块椎骨代表</translation>
    </message>
    <message>
        <source>a pelvis in one piece is held by the left ilium</source>
        <translation>整块骨盆由左髂骨代表</translation>
    </message>
    <message>
        <source>lumbar %1: its number among the dorsals is not in the name</source>
        <translation>第 %1 腰椎：名称中没有它在背椎中的编号</translation>
    </message>
    <message>
        <source>lumbar %1, counted as a dorsal</source>
        <translation>第 %1 腰椎，计为背椎</translation>
    </message>
    <message>
        <source>lower jaw</source>
        <translation>下颌</translation>
    </message>
    <message>
        <source>cervical vertebra %1</source>
        <translation>第 %1 颈椎</translation>
    </message>
    <message>
        <source>dorsal vertebra %1</source>
        <translation>第 %1 背椎</translation>
    </message>
    <message>
        <source>lumbar vertebra %1</source>
        <translation>第 %1 腰椎</translation>
    </message>
    <message>
        <source>sacral vertebra %1</source>
        <translation>第 %1 荐椎</translation>
    </message>
    <message>
        <source>caudal vertebra %1</source>
        <translation>第 %1 尾椎</translation>
    </message>
    <message>
        <source>cervical rib %1</source>
        <translation>第 %1 颈肋</translation>
    </message>
    <message>
        <source>dorsal rib %1</source>
        <translation>第 %1 背肋</translation>
    </message>
    <message>
        <source>chevron %1</source>
        <translation>第 %1 脉弧</translation>
    </message>
    <message>
        <source>scapula</source>
        <translation>肩胛骨</translation>
    </message>
    <message>
        <source>coracoid</source>
        <translation>乌喙骨</translation>
    </message>
    <message>
        <source>sternal plate</source>
        <translation>胸骨板</translation>
    </message>
    <message>
        <source>radius</source>
        <translation>桡骨</translation>
    </message>
    <message>
        <source>ulna</source>
        <translation>尺骨</translation>
    </message>
    <message>
        <source>carpal %1</source>
        <translation>第 %1 腕骨</translation>
    </message>
    <message>
        <source>metacarpal %1</source>
        <translation>第 %1 掌骨</translation>
    </message>
    <message>
        <source>finger %1</source>
        <translation>第 %1 指</translation>
    </message>
    <message>
        <source>ilium</source>
        <translation>髂骨</translation>
    </message>
    <message>
        <source>pubis</source>
        <translation>耻骨</translation>
    </message>
    <message>
        <source>ischium</source>
        <translation>坐骨</translation>
    </message>
    <message>
        <source>tibia</source>
        <translation>胫骨</translation>
    </message>
    <message>
        <source>fibula</source>
        <translation>腓骨</translation>
    </message>
    <message>
        <source>astragalus</source>
        <translation>距骨</translation>
    </message>
    <message>
        <source>metatarsal %1</source>
        <translation>第 %1 跖骨</translation>
    </message>
    <message>
        <source>toe %1</source>
        <translation>第 %1 趾</translation>
    </message>
    <message>
        <source>left %1</source>
        <translation>左%1</translation>
    </message>
    <message>
        <source>right %1</source>
        <translation>右%1</translation>
    </message>
    <message>
        <source>mirrored from %1</source>
        <translation>由 %1 镜像</translation>
    </message>
    <message>
        <source>between %1 and %2 along the column</source>
        <translation>沿脊柱介于 %1 与 %2 之间</translation>
    </message>
    <message>
        <source>by proportion to %1</source>
        <translation>按 %1 的比例</translation>
    </message>
    <message numerus="yes">
        <source>by proportion to the measured bones (median of %n)</source>
        <translation>
            <numerusform>按实测骨骼的比例（%n 个的中位数）</numerusform>
        </translation>
    </message>
    <message>
        <source>by the body plan's own size</source>
        <translation>按体型方案自身的尺寸</translation>
    </message>
    <message>
        <source>length with condyle less a condyle by proportion</source>
        <translation>含关节髁的长度减去按比例的关节髁</translation>
    </message>
    <message>
        <source>by proportion to the length</source>
        <translation>按长度的比例</translation>
    </message>
    <message>
        <source>by the body plan's angle</source>
        <translation>按体型方案的角度</translation>
    </message>
    <message>
        <source>by proportion to the measured bones of the limb</source>
        <translation>按该肢实测骨骼的比例</translation>
    </message>
    <message>
        <source>by proportion to the other limb</source>
        <translation>按另一肢的比例</translation>
    </message>
    <message>
        <source>the table says that the bone has no facet</source>
        <translation>表格注明该骨骼没有关节面</translation>
    </message>
    <message>
        <source>meets %1</source>
        <translation>与 %1 相接</translation>
    </message>
    <message>
        <source>half of the joint's facet turn</source>
        <translation>该关节关节面转角之半</translation>
    </message>
    <message>
        <source>tangent to the arc on which the facet slides</source>
        <translation>与关节面滑动的弧线相切</translation>
    </message>
    <message>
        <source>%1, fitted to the measured length of the tail</source>
        <translation>%1，并与实测的尾长相符</translation>
    </message>
    <message>
        <source>%1, fitted to the measured length of the neck</source>
        <translation>%1，并与实测的颈长相符</translation>
    </message>
    <message>
        <source>%1, fitted to the measured length of the trunk</source>
        <translation>%1，并与实测的躯干长相符</translation>
    </message>
    <message>
        <source>%1, fitted to the measured length of the sacrum</source>
        <translation>%1，并与实测的荐椎长相符</translation>
    </message>
    <message>
        <source>atlas</source>
        <translation>寰椎</translation>
    </message>
    <message>
        <source>axis</source>
        <translation>枢椎</translation>
    </message>
    <message>
        <source>%1, phalanx %2</source>
        <translation>%1，第 %2 指节</translation>
    </message>
    <message>
        <source>low browser</source>
        <translation>低处取食者</translation>
    </message>
    <message>
        <source>wide gauge</source>
        <translation>宽步距</translation>
    </message>
    <message>
        <source>mammal</source>
        <translation>哺乳动物</translation>
    </message>
    <message>
        <source>bird</source>
        <translation>鸟类</translation>
    </message>
    <message>
        <source>high browser</source>
        <translation>高处取食者</translation>
    </message>
    <message>
        <source>inferred: %1</source>
        <translation>推断：%1</translation>
    </message>
    <message>
        <source>%1; ± %2</source>
        <translation>%1；± %2</translation>
    </message>
    <message>
        <source>%1 of the smaller bone's mean extent</source>
        <translation>较小骨骼平均尺寸的 %1</translation>
    </message>
    <message>
        <source>cervical ribs bend: contact of their shafts is not counted unless they were scanned (Klein, Christian &amp; Sander 2012, Biol. Lett. 8:1032)</source>
        <translation>颈肋可弯曲：其骨干的接触不计入，扫描的除外 (Klein, Christian &amp; Sander 2012, Biol. Lett. 8:1032)</translation>
    </message>
    <message>
        <source>at least %1 overlap (by length)</source>
        <translation>重叠至少 %1（按长度）</translation>
    </message>
    <message>
        <source>at least %1 overlap (by area)</source>
        <translation>重叠至少 %1（按面积）</translation>
    </message>
    <message>
        <source>%1 cartilage</source>
        <translation>软骨 %1</translation>
    </message>
    <message>
        <source>centrum faces parallel</source>
        <translation>椎体端面平行</translation>
    </message>
    <message>
        <source>zygapophyseal overlap of at least %1 (by length)</source>
        <translation>关节面重叠至少 %1（按长度）</translation>
    </message>
    <message>
        <source>zygapophyseal overlap of at least %1 (by area)</source>
        <translation>关节面重叠至少 %1（按面积）</translation>
    </message>
    <message>
        <source>cartilage %1</source>
        <translation>软骨 %1</translation>
    </message>
    <message>
        <source>cartilage neck %1, trunk %2, tail %3</source>
        <translation>软骨：颈 %1，躯干 %2，尾 %3</translation>
    </message>
    <message>
        <source>%1, bones settling by up to %2 of its thickness</source>
        <translation>%1，骨骼沉降至多为其厚度的 %2</translation>
    </message>
    <message>
        <source>assuming %1, near limit within %2 of it; %3; neutral articulation: %4</source>
        <translation>假设：%1，余量不足 %2 为接近极限；%3；中性关节位：%4</translation>
    </message>
    <message>
        <source>facets centred</source>
        <translation>关节面居中</translation>
    </message>
    <message>
        <source>facets centred, centrum faces parallel</source>
        <translation>关节面居中，椎体端面平行</translation>
    </message>
    <message>
        <source>Neutral is where the facets of both sides are in greatest contact, their centres on each other.
Taylor, Wedel &amp; Naish 2009, Acta Palaeontol. Pol. 54:213; Vidal et al. 2020, PLoS ONE 15(1):e0227537</source>
        <translation>中性位是两侧关节面接触最多、中心彼此重合之处。
Taylor, Wedel &amp; Naish 2009, Acta Palaeontol. Pol. 54:213; Vidal et al. 2020, PLoS ONE 15(1):e0227537</translation>
    </message>
    <message>
        <source>Neutral is where the facets are centred and the faces of the centra are parallel besides; where a centrum is wedged the two pull against each other.
Mallison 2010, Swiss J. Geosci. 103:211; Vidal et al. 2020, PLoS ONE 15(1):e0227537</source>
        <translation>中性位是关节面居中且椎体端面平行之处；椎体呈楔形时两者相互牵制。
Mallison 2010, Swiss J. Geosci. 103:211; Vidal et al. 2020, PLoS ONE 15(1):e0227537</translation>
    </message>
    <message>
        <source>long axis of the centrum</source>
        <translation>椎体长轴</translation>
    </message>
    <message>
        <source>faces of the centrum upright</source>
        <translation>椎体端面直立</translation>
    </message>
    <message>
        <source>similarity in articulation</source>
        <translation>相关节时同高</translation>
    </message>
    <message>
        <source>floor of the neural canal</source>
        <translation>椎管底面</translation>
    </message>
    <message>
        <source>A vertebra is horizontal where the line from the middle of its caudal rim to that of its cranial rim is.</source>
        <translation>从椎体后缘中点到前缘中点的连线水平时，椎骨即为水平。</translation>
    </message>
    <message>
        <source>A vertebra is horizontal where the faces of its centrum stand upright, on a wedged one their mean. A scan has the faces of the bone that it replaces.</source>
        <translation>椎体端面直立时，椎骨即为水平；楔形椎骨取两端面的平均。扫描的骨骼采用它所替代骨骼的端面。</translation>
    </message>
    <message>
        <source>A vertebra is horizontal where a copy of it, held alike and articulated with it, lies level with it.</source>
        <translation>与它姿势相同的副本同它相关节而两者同高时，椎骨即为水平。</translation>
    </message>
    <message>
        <source>A vertebra is horizontal where its neural canal is: the definition that its authors prefer. A scan whose canal is not marked goes by the rims of its centrum.</source>
        <translation>椎管水平时，椎骨即为水平：这是其作者所推荐的定义。未标记椎管的扫描骨骼按椎体的边缘。</translation>
    </message>
    <message>
        <source>Taylor &amp; Wedel 2022, J. Paleontol. Techniques 25:1</source>
        <translation>Taylor &amp; Wedel 2022, J. Paleontol. Techniques 25:1</translation>
    </message>
    <message>
        <source>A range from bare bone may be off by 5° a joint; flesh may lessen it.</source>
        <translation>仅凭裸骨得出的范围每个关节可能相差 5°；软组织可能使其变小。</translation>
    </message>
    <message>
        <source>Ranges that bones alone give were off by up to 5° a joint against the living animal, and soft tissue lessens them in some (ostrich necks) and not in others.
Kuznetsov &amp; Tereschenko 2010; Cobley, Rayfield &amp; Barrett 2013, PLoS ONE 8(8):e72187; Hutson &amp; Hutson 2012</source>
        <translation>仅凭骨骼得出的范围与活体动物相比每个关节最多相差 5°；软组织在有些动物（鸵鸟颈部）中使其变小，在另一些动物中则不然。
Kuznetsov &amp; Tereschenko 2010; Cobley, Rayfield &amp; Barrett 2013, PLoS ONE 8(8):e72187; Hutson &amp; Hutson 2012</translation>
    </message>
    <message>
        <source>provisional: %1</source>
        <translation>暂定：%1</translation>
    </message>
    <message>
        <source>Provisional: the bones are still being sculpted, and their collisions are then assessed too.</source>
        <translation>暂定：骨骼仍在塑形，之后还要评估其相撞。</translation>
    </message>
    <message numerus="yes">
        <source>%n joints more are out of range</source>
        <translation>
            <numerusform>又有 %n 个关节超出活动范围</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n pairs of bones collide apart from any one joint</source>
        <translation>
            <numerusform>有 %n 对骨骼相撞，不属于任何单个关节</numerusform>
        </translation>
    </message>
    <message>
        <source>Collisions have been assessed: %1</source>
        <translation>已评估接触：%1</translation>
    </message>
    <message numerus="yes">
        <source>%n joints</source>
        <translation>
            <numerusform>%n 个关节</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 out of range, %2 near limit of %3</source>
        <translation>%3中 %1 个超出活动范围，%2 个接近极限</translation>
    </message>
    <message>
        <source>%1 out of range of %2</source>
        <translation>%2中 %1 个超出活动范围</translation>
    </message>
    <message>
        <source>%1 near limit of %2</source>
        <translation>%2中 %1 个接近极限</translation>
    </message>
    <message>
        <source>%1 of %2 within range</source>
        <translation>%2中 %1 个在活动范围内</translation>
    </message>
    <message>
        <source>all %1 within range</source>
        <translation>全部 %1在活动范围内</translation>
    </message>
    <message>
        <source>%1 not assessed</source>
        <translation>%1 个未评估</translation>
    </message>
    <message numerus="yes">
        <source>%n contacts</source>
        <translation>
            <numerusform>%n 处相撞</numerusform>
        </translation>
    </message>
    <message>
        <source>less than %1</source>
        <translation>不到 %1</translation>
    </message>
    <message>
        <source>Within range: the snout reaches up to %1.</source>
        <translation>在活动范围内：吻端最高可达 %1。</translation>
    </message>
    <message>
        <source>Out of range: the snout reaches %1 at most, %2 short.</source>
        <translation>超出活动范围：吻端最高只到 %1，差 %2。</translation>
    </message>
    <message>
        <source>Within range: the neck rises to %1.</source>
        <translation>在活动范围内：颈部可抬至 %1。</translation>
    </message>
    <message>
        <source>Out of range: the neck rises to %1 and no farther, %2 too flat.</source>
        <translation>超出活动范围：颈部只能抬至 %1，过平 %2。</translation>
    </message>
    <message>
        <source>Within range: the neck comes down to %1.</source>
        <translation>在活动范围内：颈部可降至 %1。</translation>
    </message>
    <message>
        <source>Out of range: the neck comes down to %1 and no farther, %2 too steep.</source>
        <translation>超出活动范围：颈部只能降至 %1，过陡 %2。</translation>
    </message>
    <message>
        <source>Within range: the base of the neck rises to %1.</source>
        <translation>在活动范围内：颈根可抬至 %1。</translation>
    </message>
    <message>
        <source>Out of range: the base of the neck rises to %1 and no farther, %2 too flat.</source>
        <translation>超出活动范围：颈根只能抬至 %1，过平 %2。</translation>
    </message>
    <message>
        <source>Within range: the base of the neck comes down to %1.</source>
        <translation>在活动范围内：颈根可降至 %1。</translation>
    </message>
    <message>
        <source>Out of range: the base of the neck comes down to %1 and no farther, %2 too steep.</source>
        <translation>超出活动范围：颈根只能降至 %1，过陡 %2。</translation>
    </message>
    <message>
        <source>Out of range: the snout gets there only with neck or head %1 in the ground.</source>
        <translation>超出活动范围：吻端只有在颈部或头部没入地面 %1 时才能到达。</translation>
    </message>
    <message>
        <source>Within range: the snout reaches the ground up to %1 ahead.</source>
        <translation>在活动范围内：吻端最远可触及前方 %1 处的地面。</translation>
    </message>
    <message>
        <source>Out of range: the snout stays %1 short of that place.</source>
        <translation>超出活动范围：吻端距该处还差 %1。</translation>
    </message>
    <message>
        <source>It does not come to the ground anywhere ahead of or beside the forefeet.</source>
        <translation>在前足之前或两旁，它都触不到地面。</translation>
    </message>
    <message>
        <source>The nearest place where it reaches the ground is %1 ahead; nearer to the feet the neck cannot bend enough.</source>
        <translation>它能触地的最近处在前方 %1；离脚更近时颈部弯曲不足。</translation>
    </message>
    <message>
        <source>The nearest place where it reaches the ground is %1 ahead.</source>
        <translation>它能触地的最近处在前方 %1。</translation>
    </message>
    <message>
        <source>Within range: %1 ahead the snout reaches up to %2.</source>
        <translation>在活动范围内：在前方 %1 处吻端最高可达 %2。</translation>
    </message>
    <message>
        <source>Out of range: the snout stays %1 short of that point.</source>
        <translation>超出活动范围：吻端距该点还差 %1。</translation>
    </message>
    <message>
        <source>The nearest height it has %1 ahead is %2.</source>
        <translation>它在前方 %1 处最接近的高度为 %2。</translation>
    </message>
    <message>
        <source>It comes %1 ahead at no height.</source>
        <translation>它在任何高度都到不了前方 %1。</translation>
    </message>
    <message>
        <source>Within range: the base of the tail can be carried at %1 to the horizontal.</source>
        <translation>在活动范围内：尾根可与水平成 %1。</translation>
    </message>
    <message>
        <source>Out of range: the base of the tail comes no nearer to horizontal than %1, %2 too steep.</source>
        <translation>超出活动范围：尾根与水平最接近时为 %1，过陡 %2。</translation>
    </message>
    <message>
        <source>%1 and %2 more</source>
        <translation>%1 以及另外 %2 个</translation>
    </message>
    <message>
        <source>Not answered: joint %1 has no range, because of %2 at every angle.</source>
        <translation>未作答：关节 %1 没有活动范围，因为在任何角度都受 %2 限制。</translation>
    </message>
    <message>
        <source>Not answered: joints %1 have no range.</source>
        <translation>未作答：关节 %1 没有活动范围。</translation>
    </message>
    <message>
        <source>Not answered: %1.</source>
        <translation>未能回答：%1。</translation>
    </message>
    <message>
        <source>Out of range: a joint on the way is out of range at every angle.</source>
        <translation>超出活动范围：途中有一个关节在任何角度都超出活动范围。</translation>
    </message>
    <message>
        <source>%1 Farther only with bones that collide: %2.</source>
        <translation>%1再远则骨骼相撞：%2。</translation>
    </message>
    <message>
        <source>Out of range: only with bones that collide: %1.</source>
        <translation>超出活动范围：只有骨骼相撞才能做到：%1。</translation>
    </message>
    <message>
        <source>No minimum overlap alone brings it within range, however small.</source>
        <translation>仅靠降低最小重叠，无论多小，都不能使其进入活动范围。</translation>
    </message>
    <message>
        <source>It stays within range up to a minimum overlap of %1 (now %2).</source>
        <translation>最小重叠不超过 %1 时仍在活动范围内（现为 %2）。</translation>
    </message>
    <message>
        <source>It would be within range with a minimum overlap of %1 or less (now %2).</source>
        <translation>若最小重叠为 %1 或更小，则在活动范围内（现为 %2）。</translation>
    </message>
    <message>
        <source>No cartilage in the %1 up to %2 of the centrum's length alone brings it within range.</source>
        <translation>仅靠%1的软骨，至椎体长度的 %2 为止，都不能使其进入活动范围。</translation>
    </message>
    <message>
        <source>It stays within range without cartilage in the %1 and with any up to %2 of the centrum's length (now %3).</source>
        <translation>%1无软骨时，以及软骨至椎体长度的 %2 为止，都在活动范围内（现为 %3）。</translation>
    </message>
    <message>
        <source>It stays within range with cartilage in the %1 up to %2 of the centrum's length (now %3).</source>
        <translation>%1的软骨不超过椎体长度的 %2 时仍在活动范围内（现为 %3）。</translation>
    </message>
    <message>
        <source>It would be within range with cartilage in the %1 up to %2 of the centrum's length (now %3).</source>
        <translation>若%1的软骨不超过椎体长度的 %2，则在活动范围内（现为 %3）。</translation>
    </message>
    <message>
        <source>It stays within range with cartilage in the %1 from %2 of the centrum's length on (now %3).</source>
        <translation>%1的软骨达到椎体长度的 %2 起仍在活动范围内（现为 %3）。</translation>
    </message>
    <message>
        <source>It would be within range with cartilage in the %1 from %2 of the centrum's length on (now %3).</source>
        <translation>若%1的软骨达到椎体长度的 %2，则在活动范围内（现为 %3）。</translation>
    </message>
    <message>
        <source>It stays within range with cartilage in the %1 from %2 to %3 of the centrum's length (now %4).</source>
        <translation>%1的软骨为椎体长度的 %2 至 %3 时仍在活动范围内（现为 %4）。</translation>
    </message>
    <message>
        <source>It would be within range with cartilage in the %1 from %2 to %3 of the centrum's length (now %4).</source>
        <translation>若%1的软骨为椎体长度的 %2 至 %3，则在活动范围内（现为 %4）。</translation>
    </message>
    <message>
        <source>Not even every joint's range widened by %1 at either end brings it within range.</source>
        <translation>即使每个关节的活动范围两端各放宽 %1，也不能使其进入活动范围。</translation>
    </message>
    <message>
        <source>It would be within range with every joint's range widened by %1 at either end.</source>
        <translation>若每个关节的活动范围两端各放宽 %1，则在活动范围内。</translation>
    </message>
    <message>
        <source>It is out of range where every joint's range is narrowed by %1 at either end.</source>
        <translation>若每个关节的活动范围两端各收窄 %1，则超出活动范围。</translation>
    </message>
    <message>
        <source>It stays within range even with every joint's range narrowed by %1 at either end.</source>
        <translation>即使每个关节的活动范围两端各收窄 %1，仍在活动范围内。</translation>
    </message>
    <message>
        <source>It stays within range with every joint's range narrowed by up to %1 at either end.</source>
        <translation>每个关节的活动范围两端各收窄不超过 %1 时，仍在活动范围内。</translation>
    </message>
    <message>
        <source>within range</source>
        <translation>范围内</translation>
    </message>
    <message>
        <source>out of range</source>
        <translation>超出范围</translation>
    </message>
    <message>
        <source>With %1 bending as well: %2; they turn by %3 in all.</source>
        <translation>若 %1 也弯曲：%2；它们共转动 %3。</translation>
    </message>
    <message>
        <source>With %1 bending as well: %2 instead of %3, %4; they turn by %5 in all.</source>
        <translation>若 %1 也弯曲：%2，而非 %3，%4；它们共转动 %5。</translation>
    </message>
    <message>
        <source>as claimed</source>
        <translation>符合论断</translation>
    </message>
    <message>
        <source>not as claimed</source>
        <translation>不符合论断</translation>
    </message>
    <message>
        <source>Neck undeflected, habitual by Stevens 2013: %1, %2.</source>
        <translation>颈部不偏转（Stevens 2013 认为这是惯常姿态）：%1，%2。</translation>
    </message>
    <message>
        <source>Neck extended from its base, habitual by Taylor, Wedel &amp; Naish 2009: %1, %2; there bones collide.</source>
        <translation>颈部自基部背屈（Taylor, Wedel &amp; Naish 2009 认为这是惯常姿态）：%1，%2；此时骨骼相撞。</translation>
    </message>
    <message>
        <source>Neck extended from its base, habitual by Taylor, Wedel &amp; Naish 2009: %1, %2.</source>
        <translation>颈部自基部背屈（Taylor, Wedel &amp; Naish 2009 认为这是惯常姿态）：%1，%2。</translation>
    </message>
    <message>
        <source>The claimed value lies at %1 of the way from the undeflected neck to the most within range.</source>
        <translation>所述数值位于从不偏转的颈部到活动范围内最大值之间的 %1 处。</translation>
    </message>
    <message>
        <source>Joints near their limit in this pose: %1 of %2 that bend.</source>
        <translation>此姿态中接近极限的关节：可弯曲的 %2 个中有 %1 个。</translation>
    </message>
    <message>
        <source>Not assessed, therefore left as posed: %1.</source>
        <translation>未评估，因此保持原姿态：%1。</translation>
    </message>
    <message>
        <source>Out of range in what stays as posed: %1.</source>
        <translation>在保持原姿态的部分中超出活动范围：%1。</translation>
    </message>
    <message>
        <source>Collisions between bones were not assessed.</source>
        <translation>未判定骨骼相撞。</translation>
    </message>
    <message>
        <source>In this pose bones collide: %1.</source>
        <translation>在此姿态中骨骼相撞：%1。</translation>
    </message>
    <message>
        <source>In this pose a part lies %1 in the ground.</source>
        <translation>此姿态中有一部分没入地面 %1。</translation>
    </message>
    <message>
        <source>Minimum head height</source>
        <translation>最低头高</translation>
    </message>
    <message>
        <source>Neck inclination</source>
        <translation>颈部倾角</translation>
    </message>
    <message>
        <source>Neck base inclination</source>
        <translation>颈根倾角</translation>
    </message>
    <message>
        <source>Snout reaches the ground</source>
        <translation>吻端触地</translation>
    </message>
    <message>
        <source>Head reaches a point ahead</source>
        <translation>头部到达前方一点</translation>
    </message>
    <message>
        <source>Tail base near horizontal</source>
        <translation>尾根接近水平</translation>
    </message>
    <message>
        <source>Height of the snout over the ground.</source>
        <translation>吻端离地的高度。</translation>
    </message>
    <message>
        <source>Slope to the horizontal of the straight line from the neck's base to its far end, positive upwards.</source>
        <translation>颈根到颈部远端的直线与水平的夹角，向上为正。</translation>
    </message>
    <message>
        <source>Slope of the hindmost cervical to the horizontal, positive upwards; what it is measured by is chosen under Assumptions.</source>
        <translation>最后一节颈椎与水平的夹角，向上为正；按何者量取在“假设”中选择。</translation>
    </message>
    <message>
        <source>Distance of the snout ahead of the foremost standing forefoot, along the ground.</source>
        <translation>吻端超前于最前方着地前足的距离，沿地面计。</translation>
    </message>
    <message>
        <source>Height of the snout over the ground at a distance ahead of the foremost standing forefoot.</source>
        <translation>在最前方着地前足之前一定距离处，吻端离地的高度。</translation>
    </message>
    <message>
        <source>Slope to the horizontal of the line through the first five caudals.</source>
        <translation>前五节尾椎连线与水平的夹角。</translation>
    </message>
    <message>
        <source>at least</source>
        <translation>至少</translation>
    </message>
    <message>
        <source>at most</source>
        <translation>至多</translation>
    </message>
    <message>
        <source>Minimum head height %1</source>
        <translation>最低头高 %1</translation>
    </message>
    <message>
        <source>Neck inclination at least %1</source>
        <translation>颈部倾角至少 %1</translation>
    </message>
    <message>
        <source>Neck inclination at most %1</source>
        <translation>颈部倾角至多 %1</translation>
    </message>
    <message>
        <source>Neck base inclination at least %1</source>
        <translation>颈根倾角至少 %1</translation>
    </message>
    <message>
        <source>Neck base inclination at most %1</source>
        <translation>颈根倾角至多 %1</translation>
    </message>
    <message>
        <source>Snout reaches the ground %1 ahead of the forefeet</source>
        <translation>吻端触及前足之前 %1 处的地面</translation>
    </message>
    <message>
        <source>Head reaches a height of %1, %2 ahead of the forefeet</source>
        <translation>头部在前足之前 %2 处达到 %1 高</translation>
    </message>
    <message>
        <source>Tail base within %1 of horizontal</source>
        <translation>尾根与水平相差不超过 %1</translation>
    </message>
    <message>
        <source>%1 at every angle: %2</source>
        <translation>%1 在任何角度：%2</translation>
    </message>
    <message>
        <source>not answered</source>
        <translation>未回答</translation>
    </message>
    <message>
        <source>Facets of the joints that bend: %1.</source>
        <translation>弯曲各关节的关节面：%1。</translation>
    </message>
    <message>
        <source>Trunk, limbs and feet stay as posed; neck, head and tail bend up and down only, each joint within its range. Soft tissue is ignored; it is likely to narrow ranges (Cobley, Rayfield &amp; Barrett 2013). Ranges of bare bones may be off by several degrees a joint (Kuznetsov &amp; Tereschenko 2010; Hutson &amp; Hutson 2012).</source>
        <translation>躯干、四肢和足保持所摆的姿态；颈部、头部和尾部只上下弯曲，每个关节都在其活动范围内。软组织不予考虑；它很可能使活动范围变窄（Cobley, Rayfield &amp; Barrett 2013）。裸骨的活动范围每个关节可能偏差数度（Kuznetsov &amp; Tereschenko 2010; Hutson &amp; Hutson 2012）。</translation>
    </message>
    <message>
        <source>Which posture was habitual is not settled: against the undeflected neck speaks that living amniotes at rest extend theirs and flex the head, against the extended one that the column of sauropods is straight from trunk to neck. Extended is here: base joints at their upper limits until the middle cervical is upright, the head at its lower limit.</source>
        <translation>哪种姿态是惯常的尚无定论：不利于颈部不偏转的，是现生羊膜动物静息时颈部背屈、头部下屈；不利于颈部背屈的，是蜥脚类的脊柱从躯干到颈部是直的。此处的背屈指：自基部起各关节处于上限，直到中部颈椎直立，头部处于下限。</translation>
    </message>
    <message>
        <source>virtually certain</source>
        <translation>几乎确定</translation>
    </message>
    <message>
        <source>very likely</source>
        <translation>很可能</translation>
    </message>
    <message>
        <source>likely</source>
        <translation>可能</translation>
    </message>
    <message>
        <source>about as likely as not</source>
        <translation>或然或不然</translation>
    </message>
    <message>
        <source>unlikely</source>
        <translation>不太可能</translation>
    </message>
    <message>
        <source>very unlikely</source>
        <translation>很不可能</translation>
    </message>
    <message>
        <source>exceptionally unlikely</source>
        <translation>极不可能</translation>
    </message>
    <message>
        <source>more than %1</source>
        <translation>超过 %1</translation>
    </message>
    <message>
        <source>No probability: none of %1 samples gave an answer.</source>
        <translation>没有概率：%1 次抽样中没有一次给出回答。</translation>
    </message>
    <message>
        <source>%1: within range in %2 of %3 samples.</source>
        <translation>%1：在 %3 次抽样的 %2 中在活动范围内。</translation>
    </message>
    <message>
        <source>Samples in which a joint had no range, left out: %1.</source>
        <translation>有关节没有活动范围而略去的抽样：%1。</translation>
    </message>
    <message numerus="yes">
        <source>%n samples gave no animal that could be built and were left out.</source>
        <translation>
            <numerusform>有 %n 次抽样无法建成动物，已略去。</numerusform>
        </translation>
    </message>
    <message>
        <source>Samples vary every measure within its error (measured %1, inferred %2 or as its rule says), and the shape of deformed bones by %3.</source>
        <translation>抽样使每个测量值在其误差内变动（实测 %1，推断 %2 或依其规则），变形骨骼的形状变动 %3。</translation>
    </message>
    <message>
        <source>They vary the minimum overlap from %1 to %2, cartilage from %3 to %4 (rarely up to %5) of the centrum's length, and what facets may interpenetrate and separate by a factor of up to %6.</source>
        <translation>并使最小重叠在 %1 到 %2 之间、软骨在椎体长度的 %3 到 %4 之间（少数到 %5）变动，关节面容许的相互嵌入与分离按至多 %6 倍变动。</translation>
    </message>
    <message>
        <source>Both definitions of neutral count alike.</source>
        <translation>两种中性定义各占一半。</translation>
    </message>
    <message>
        <source>Bones collide where those of the animal as it is do.</source>
        <translation>骨骼相撞之处取自现有的动物。</translation>
    </message>
    <message>
        <source>Words of likelihood: Mastrandrea et al. 2010, IPCC.</source>
        <translation>可能性用语：Mastrandrea et al. 2010, IPCC。</translation>
    </message>
    <message>
        <source>partly measured</source>
        <translation>部分实测</translation>
    </message>
    <message>
        <source>program default</source>
        <translation>程序默认值</translation>
    </message>
    <message>
        <source>%1 measured</source>
        <translation>%1 个实测</translation>
    </message>
    <message>
        <source>%1 partly measured</source>
        <translation>%1 个部分实测</translation>
    </message>
    <message>
        <source>%1 inferred</source>
        <translation>%1 个推断</translation>
    </message>
    <message>
        <source>%1 without facets (limits set by the program)</source>
        <translation>%1 个无关节面（限度由程序设定）</translation>
    </message>
    <message>
        <source>cannot save %1: %2; %3</source>
        <translation>无法保存 %1：%2；%3</translation>
    </message>
    <message>
        <source>cannot open %1: %2</source>
        <translation>无法打开 %1：%2</translation>
    </message>
    <message>
        <source>cannot read %1: %2</source>
        <translation>无法读取 %1：%2</translation>
    </message>
    <message>
        <source>cannot export to %1: %2</source>
        <translation>无法导出到 %1：%2</translation>
    </message>
    <message>
        <source>cannot make the folder %1: %2</source>
        <translation>无法建立文件夹 %1：%2</translation>
    </message>
    <message>
        <source>the folder %1 cannot be written; choose another one or change its rights</source>
        <translation>无法写入文件夹 %1；请另选一个或更改其权限</translation>
    </message>
    <message>
        <source>the name of the file is missing</source>
        <translation>缺少文件名</translation>
    </message>
    <message>
        <source>there is no folder %1</source>
        <translation>没有文件夹 %1</translation>
    </message>
    <message>
        <source>%1 is a file, not a folder</source>
        <translation>%1 是文件，不是文件夹</translation>
    </message>
    <message>
        <source>this is the name of a folder</source>
        <translation>这是文件夹的名称</translation>
    </message>
    <message>
        <source>you may not write this file</source>
        <translation>您无权写入此文件</translation>
    </message>
    <message>
        <source>you may not write in the folder</source>
        <translation>您无权在此文件夹中写入</translation>
    </message>
    <message>
        <source>there is no such file</source>
        <translation>没有这个文件</translation>
    </message>
    <message>
        <source>this is a folder, not a file</source>
        <translation>这是文件夹，不是文件</translation>
    </message>
    <message>
        <source>you may not read it</source>
        <translation>您无权读取它</translation>
    </message>
    <message>
        <source>it is %1, not a plain file</source>
        <translation>它是%1，不是普通文件</translation>
    </message>
    <message>
        <source>a folder</source>
        <translation>文件夹</translation>
    </message>
    <message>
        <source>a pipe</source>
        <translation>管道</translation>
    </message>
    <message>
        <source>a socket</source>
        <translation>套接字</translation>
    </message>
    <message>
        <source>a device</source>
        <translation>设备</translation>
    </message>
    <message>
        <source>it is a link that leads nowhere</source>
        <translation>它是不指向任何文件的链接</translation>
    </message>
    <message>
        <source>its links lead in a circle</source>
        <translation>它的链接绕成一圈</translation>
    </message>
    <message>
        <source>the system does not permit it</source>
        <translation>系统不允许</translation>
    </message>
    <message>
        <source>the disk is full</source>
        <translation>磁盘已满</translation>
    </message>
    <message>
        <source>your share of the disk is used up</source>
        <translation>您的磁盘配额已用完</translation>
    </message>
    <message>
        <source>it would be larger than the system permits</source>
        <translation>它会超出系统允许的大小</translation>
    </message>
    <message>
        <source>nothing can be written to this disk</source>
        <translation>此磁盘不可写入</translation>
    </message>
    <message>
        <source>the disk fails</source>
        <translation>磁盘出错</translation>
    </message>
    <message>
        <source>the name is too long</source>
        <translation>名称过长</translation>
    </message>
    <message>
        <source>too many files are open</source>
        <translation>打开的文件过多</translation>
    </message>
    <message>
        <source>there is not enough memory</source>
        <translation>内存不足</translation>
    </message>
    <message>
        <source>the network folder does not answer</source>
        <translation>网络文件夹没有响应</translation>
    </message>
    <message>
        <source>another program is using it</source>
        <translation>另一个程序正在使用它</translation>
    </message>
    <message>
        <source>the system reports error %1</source>
        <translation>系统报告错误 %1</translation>
    </message>
    <message>
        <source>%1 is too large for a measurement table; choose a CSV file</source>
        <translation>%1 太大，不会是测量表；请选择 CSV 文件</translation>
    </message>
    <message>
        <source>add a name after the folder</source>
        <translation>请在文件夹之后加上名称</translation>
    </message>
    <message>
        <source>make the folder first or choose another one</source>
        <translation>请先建立该文件夹，或另选一个</translation>
    </message>
    <message>
        <source>choose a folder</source>
        <translation>请选择文件夹</translation>
    </message>
    <message>
        <source>choose another name</source>
        <translation>请另取一个名称</translation>
    </message>
    <message>
        <source>choose another folder</source>
        <translation>请另选文件夹</translation>
    </message>
    <message>
        <source>make room or choose another folder; the old file, if any, is untouched</source>
        <translation>请腾出空间或另选文件夹；原有文件（若有）未受影响</translation>
    </message>
    <message>
        <source>it is a zip container that is cut short or damaged</source>
        <translation>它是被截断或损坏的 ZIP 容器</translation>
    </message>
    <message>
        <source>it holds %1 entries, the most that are read are %2</source>
        <translation>它含有 %1 个条目，最多读取 %2 个</translation>
    </message>
    <message>
        <source>its entries say they take %1 unpacked, more than a file of its size can hold</source>
        <translation>其条目自称解开后占 %1，超出这样大小的文件所能容纳</translation>
    </message>
    <message>
        <source>its entry %1 leads out of it</source>
        <translation>其条目 %1 指向容器之外</translation>
    </message>
    <message>
        <source>its entry %1 is there twice</source>
        <translation>其条目 %1 出现两次</translation>
    </message>
    <message>
        <source>its entry %1 is encrypted; pack it without a password</source>
        <translation>其条目 %1 已加密；请不用密码重新打包</translation>
    </message>
    <message>
        <source>its entry %1 is packed in a way that is not read here; pack it with deflate</source>
        <translation>其条目 %1 的打包方式此处不读取；请用 Deflate 打包</translation>
    </message>
    <message>
        <source>its entry %1 says it takes %2 unpacked, more than its packed bytes can hold</source>
        <translation>其条目 %1 自称解开后占 %2，超出其打包字节所能容纳</translation>
    </message>
    <message>
        <source>it is not in the project file</source>
        <translation>它不在项目文件中</translation>
    </message>
    <message>
        <source>it takes %1, the most that is read is %2</source>
        <translation>它占 %1，最多读取 %2</translation>
    </message>
    <message>
        <source>it is damaged inside the project file</source>
        <translation>它在项目文件中已损坏</translation>
    </message>
    <message>
        <source>%1:%2, column %3: %4</source>
        <translation>%1:%2，第 %3 列：%4</translation>
    </message>
    <message>
        <source>%1:%2, column %3, %4: %5</source>
        <translation>%1:%2，第 %3 列，%4：%5</translation>
    </message>
    <message>
        <source>%1:%2, column %3: %4; the file is damaged or was edited by hand</source>
        <translation>%1:%2，第 %3 列：%4；文件已损坏或被手工改过</translation>
    </message>
    <message>
        <source>%1, found "%2"</source>
        <translation>%1，但这里是“%2”</translation>
    </message>
    <message>
        <source>%1, but the file ends here</source>
        <translation>%1，但文件到此为止</translation>
    </message>
    <message>
        <source>expected ',' or '}' after a member</source>
        <translation>成员之后应为“,”或“}”</translation>
    </message>
    <message>
        <source>expected ',' or ']' after an item</source>
        <translation>列表项之后应为“,”或“]”</translation>
    </message>
    <message>
        <source>expected ':' after the key</source>
        <translation>键之后应为“:”</translation>
    </message>
    <message>
        <source>expected a key in quotes</source>
        <translation>此处应为带引号的键</translation>
    </message>
    <message>
        <source>expected a value</source>
        <translation>此处应为一个值</translation>
    </message>
    <message>
        <source>expected a digit</source>
        <translation>此处应为数字字符</translation>
    </message>
    <message>
        <source>expected four hexadecimal digits after \u</source>
        <translation>\u 之后应为四位十六进制数字</translation>
    </message>
    <message>
        <source>there is more after the end of the document</source>
        <translation>文档结束之后还有内容</translation>
    </message>
    <message>
        <source>nested deeper than %1</source>
        <translation>嵌套超过 %1 层</translation>
    </message>
    <message>
        <source>the key "%1" is given twice</source>
        <translation>键“%1”给出了两次</translation>
    </message>
    <message>
        <source>a number must not begin with 0</source>
        <translation>数不能以 0 开头</translation>
    </message>
    <message>
        <source>the text in quotes has no end</source>
        <translation>带引号的文字没有结束</translation>
    </message>
    <message>
        <source>a line break or control character inside quotes</source>
        <translation>引号内有换行或控制字符</translation>
    </message>
    <message>
        <source>bytes that are no UTF-8</source>
        <translation>有不是 UTF-8 的字节</translation>
    </message>
    <message>
        <source>unknown escape in quotes</source>
        <translation>引号内有不认识的转义</translation>
    </message>
    <message>
        <source>half of a surrogate pair</source>
        <translation>只有半个代理对</translation>
    </message>
    <message>
        <source>expected %1, found %2</source>
        <translation>此处应为%1，但这里是%2</translation>
    </message>
    <message>
        <source>expected a list of %1 %2, found %3</source>
        <translation>此处应为由 %1 个%2组成的列表，但这里是 %3</translation>
    </message>
    <message>
        <source>expected a whole number, found %1</source>
        <translation>应为整数，但这里是 %1</translation>
    </message>
    <message>
        <source>the member "%1" is missing</source>
        <translation>缺少成员“%1”</translation>
    </message>
    <message>
        <source>no such member here; known are %1</source>
        <translation>这里没有这个成员；可用的有 %1</translation>
    </message>
    <message>
        <source>the number is too large</source>
        <translation>数太大</translation>
    </message>
    <message>
        <source>true or false</source>
        <translation>true 或 false</translation>
    </message>
    <message>
        <source>a number</source>
        <translation>一个数</translation>
    </message>
    <message>
        <source>a text in quotes</source>
        <translation>带引号的文字</translation>
    </message>
    <message>
        <source>a list [...]</source>
        <translation>列表 [...]</translation>
    </message>
    <message>
        <source>an object {...}</source>
        <translation>对象 {...}</translation>
    </message>
    <message>
        <source>numbers</source>
        <translation>数</translation>
    </message>
    <message>
        <source>rows</source>
        <translation>行</translation>
    </message>
    <message>
        <source>angles in degrees</source>
        <translation>角度（度）</translation>
    </message>
    <message>
        <source>%1 is not a Zygapose project: its "schema" is not %2</source>
        <translation>%1 不是 Zygapose 项目：它的 “schema” 不是 %2</translation>
    </message>
    <message>
        <source>the file is of project version %1, the newest this program reads is %2; open it with a newer Zygapose</source>
        <translation>文件是第 %1 版的项目，本程序最多能读到第 %2 版；请用更新的 Zygapose 打开</translation>
    </message>
    <message>
        <source>there is no project version %1</source>
        <translation>没有第 %1 版的项目</translation>
    </message>
    <message>
        <source>the table is not complete: %1</source>
        <translation>表不完整：%1</translation>
    </message>
    <message>
        <source>it is a zip container without %1, so no project</source>
        <translation>它是没有 %1 的 ZIP 容器，因此不是项目</translation>
    </message>
    <message>
        <source>its entry %1 cannot be read: %2</source>
        <translation>其条目 %1 无法读取：%2</translation>
    </message>
    <message>
        <source>a bone sculpted from the table stands in for the scan of %1: %2 cannot be used: %3; %4</source>
        <translation>由测量表塑形的骨骼代替 %1 的扫描：%2 无法使用：%3；%4</translation>
    </message>
    <message>
        <source>the scan of %1 is not at %2; the same mesh was found at %3 and is in use; saving the project puts a copy in its place</source>
        <translation>%1 的扫描不在 %2；在 %3 找到了相同的网格，已在使用；保存项目会把副本放回原位</translation>
    </message>
    <message>
        <source>put it back or import the scan of this bone again</source>
        <translation>请放回原处，或重新导入该骨骼的扫描</translation>
    </message>
    <message>
        <source>allow reading it, then open the project again</source>
        <translation>请允许读取它，然后重新打开项目</translation>
    </message>
    <message>
        <source>put the mesh itself in this place</source>
        <translation>请把网格文件本身放在此处</translation>
    </message>
    <message>
        <source>put it back from a copy or import the scan of this bone again</source>
        <translation>请从副本放回，或重新导入该骨骼的扫描</translation>
    </message>
    <message>
        <source>open the project again once that is mended</source>
        <translation>请在解决后重新打开项目</translation>
    </message>
    <message>
        <source>"%1" is not among %2</source>
        <translation>“%1”不在 %2 之中</translation>
    </message>
    <message>
        <source>must not be negative</source>
        <translation>不能为负</translation>
    </message>
    <message>
        <source>says the same as %1 in another unit; leave one of them out</source>
        <translation>与 %1 所说相同，只是单位不同；请去掉其中之一</translation>
    </message>
    <message>
        <source>must be more than 0</source>
        <translation>必须大于 0</translation>
    </message>
    <message>
        <source>must be from %1 to %2</source>
        <translation>必须在 %1 到 %2 之间</translation>
    </message>
    <message>
        <source>must be 0 or from %1 to %2</source>
        <translation>必须是 0，或在 %1 到 %2 之间</translation>
    </message>
    <message>
        <source>must be of length 1</source>
        <translation>长度必须为 1</translation>
    </message>
    <message>
        <source>these rows are not a rotation</source>
        <translation>这几行不是旋转</translation>
    </message>
    <message>
        <source>these rows turn space inside out or press it flat</source>
        <translation>这几行会把空间翻转或压平</translation>
    </message>
    <message>
        <source>expected [value, origin], [value, origin, rule] or [value, origin, rule, standard error]</source>
        <translation>此处应为 [value, origin]、[value, origin, rule] 或 [value, origin, rule, standard error]</translation>
    </message>
    <message>
        <source>there is no bone "%1"</source>
        <translation>没有骨骼“%1”</translation>
    </message>
    <message>
        <source>"%1" is no kind of evidence</source>
        <translation>“%1”不是一种证据</translation>
    </message>
    <message>
        <source>"%1" is no body plan</source>
        <translation>“%1”不是体型方案</translation>
    </message>
    <message>
        <source>there is no measure of this name and unit</source>
        <translation>没有这个名称和单位的测量项</translation>
    </message>
    <message>
        <source>an animal of this plan and these counts has no %1</source>
        <translation>这种体型方案和这些骨数的动物没有 %1</translation>
    </message>
    <message>
        <source>%1 is given twice</source>
        <translation>%1 给出了两次</translation>
    </message>
    <message>
        <source>the specimen has no joint "%1"</source>
        <translation>标本没有关节“%1”</translation>
    </message>
    <message>
        <source>this joint is named twice</source>
        <translation>这个关节写了两次</translation>
    </message>
    <message>
        <source>"%1" is no kind of claim; there are %2</source>
        <translation>“%1”不是一种论断；可用的有 %2</translation>
    </message>
    <message>
        <source>this bone has two scans</source>
        <translation>这块骨骼有两个扫描</translation>
    </message>
    <message>
        <source>must lie in the facet's plane</source>
        <translation>必须位于关节面的平面内</translation>
    </message>
    <message>
        <source>an outline needs at least three corners</source>
        <translation>轮廓至少需要三个角点</translation>
    </message>
    <message>
        <source>it does not lie in the folder of the scans</source>
        <translation>它不在扫描文件夹中</translation>
    </message>
    <message>
        <source>it has been changed since</source>
        <translation>它后来被改动过</translation>
    </message>
    <message>
        <source>it is not a scan as kept beside a project</source>
        <translation>它不是项目旁保存的那种扫描</translation>
    </message>
    <message>
        <source>it is cut short</source>
        <translation>它不完整</translation>
    </message>
    <message>
        <source>it is damaged</source>
        <translation>它已损坏</translation>
    </message>
    <message>
        <source>cannot save: %1 is not a finite number</source>
        <translation>无法保存：%1不是有限数</translation>
    </message>
    <message>
        <source>the angle of %1</source>
        <translation>%1 的角度</translation>
    </message>
    <message>
        <source>"%1" of %2</source>
        <translation>%2 的“%1”</translation>
    </message>
    <message>
        <source>a thickness of the body guide</source>
        <translation>体形参考面的厚度</translation>
    </message>
    <message>
        <source>the value of a claim</source>
        <translation>论断的数值</translation>
    </message>
    <message>
        <source>a footprint</source>
        <translation>一个足迹</translation>
    </message>
    <message>
        <source>the trackway's place</source>
        <translation>行迹的位置</translation>
    </message>
    <message>
        <source>the trackway's heading</source>
        <translation>行迹的方向</translation>
    </message>
    <message>
        <source>the hip multiplier</source>
        <translation>髋高倍数</translation>
    </message>
    <message>
        <source>a density</source>
        <translation>密度</translation>
    </message>
    <message>
        <source>a hull factor</source>
        <translation>凸包系数</translation>
    </message>
    <message>
        <source>a note's place</source>
        <translation>注释的位置</translation>
    </message>
    <message>
        <source>a sheet's scale</source>
        <translation>图版的比例</translation>
    </message>
    <message>
        <source>the height of a sheet's person</source>
        <translation>图版中人的身高</translation>
    </message>
    <message>
        <source>a scan's placing</source>
        <translation>扫描的放置</translation>
    </message>
    <message>
        <source>cartilage</source>
        <translation>软骨</translation>
    </message>
    <message>
        <source>the tolerated contact</source>
        <translation>容许的接触</translation>
    </message>
    <message>
        <source>the animal's place</source>
        <translation>动物的位置</translation>
    </message>
    <message>
        <source>unknown</source>
        <translation>未知</translation>
    </message>
    <message>
        <source>the tail</source>
        <translation>尾部</translation>
    </message>
    <message>
        <source>the one planted foot and the tail</source>
        <translation>唯一落地的脚和尾部</translation>
    </message>
    <message>
        <source>the one planted foot</source>
        <translation>唯一落地的脚</translation>
    </message>
    <message>
        <source>the %1 planted feet and the tail</source>
        <translation>%1 只落地的脚和尾部</translation>
    </message>
    <message>
        <source>the %1 planted feet</source>
        <translation>%1 只落地的脚</translation>
    </message>
    <message>
        <source>in front</source>
        <translation>前方</translation>
    </message>
    <message>
        <source>behind</source>
        <translation>后方</translation>
    </message>
    <message>
        <source>on the left</source>
        <translation>左侧</translation>
    </message>
    <message>
        <source>on the right</source>
        <translation>右侧</translation>
    </message>
    <message>
        <source>%1 %2 ahead of %4</source>
        <translation>%1在 %4 前 %2</translation>
    </message>
    <message>
        <source>%1 %2 behind %4</source>
        <translation>%1在 %4 后 %2</translation>
    </message>
    <message>
        <source>%1 %3 left of %4</source>
        <translation>%1在 %4 左 %3</translation>
    </message>
    <message>
        <source>%1 %3 right of %4</source>
        <translation>%1在 %4 右 %3</translation>
    </message>
    <message>
        <source>%1 %2 ahead of and %3 left of %4</source>
        <translation>%1在 %4 前 %2、左 %3</translation>
    </message>
    <message>
        <source>%1 %2 ahead of and %3 right of %4</source>
        <translation>%1在 %4 前 %2、右 %3</translation>
    </message>
    <message>
        <source>%1 %2 behind and %3 left of %4</source>
        <translation>%1在 %4 后 %2、左 %3</translation>
    </message>
    <message>
        <source>%1 %2 behind and %3 right of %4</source>
        <translation>%1在 %4 后 %2、右 %3</translation>
    </message>
    <message>
        <source>after %1</source>
        <translation>%1 之后</translation>
    </message>
    <message>
        <source>%1: no print</source>
        <translation>%1：没有足迹</translation>
    </message>
    <message>
        <source>the print after %1</source>
        <translation>%1 之后的足迹</translation>
    </message>
    <message>
        <source>%1 on %2 (%3)</source>
        <translation>%1在 %2 上（%3）</translation>
    </message>
    <message>
        <source>Speeds from tracks on soft ground are too high (Prescott et al. 2025, Biol. Lett. 21:20250191); take the speed as an estimate.</source>
        <translation>由软地足迹得出的速度偏高（Prescott 等 2025，Biol. Lett. 21:20250191）；请将速度视为估算。</translation>
    </message>
    <message>
        <source>fore limbs</source>
        <translation>前肢</translation>
    </message>
    <message>
        <source>hind limbs</source>
        <translation>后肢</translation>
    </message>
    <message>
        <source>%1 to %2 kg</source>
        <translation>%1 至 %2 kg</translation>
    </message>
    <message>
        <source>%1 to %2 t</source>
        <translation>%1 至 %2 t</translation>
    </message>
    <message>
        <source>unknown: no circumferences</source>
        <translation>未知：没有周长</translation>
    </message>
    <message>
        <source>%1, circumferences measured</source>
        <translation>%1，周长为实测</translation>
    </message>
    <message>
        <source>%1, circumferences inferred</source>
        <translation>%1，周长为推断</translation>
    </message>
    <message>
        <source>The animal has no feet: no balance to tell.</source>
        <translation>该动物没有足：无平衡可言。</translation>
    </message>
    <message>
        <source>Nothing touches the ground: no balance to tell.</source>
        <translation>没有任何部分接触地面：无平衡可言。</translation>
    </message>
    <message>
        <source>The centre of mass lies over %1, %2 inside the nearest edge, which is %3.</source>
        <translation>质心位于%1上方，距最近的边缘（在%3）%2。</translation>
    </message>
    <message>
        <source>The centre of mass lies %1 outside %2, %3: the animal would tip over.</source>
        <translation>质心在%2之外 %1，%3：动物会倾倒。</translation>
    </message>
    <message>
        <source>The tail carries %1 to %2 of the weight, %3 with hind feet and tail loaded in their middles.</source>
        <translation>尾部承担 %1 至 %2 的重量；后足和尾部都在中点受力时为 %3。</translation>
    </message>
    <message>
        <source>The tail carries %1 to %2 of the weight.</source>
        <translation>尾部承担 %1 至 %2 的重量。</translation>
    </message>
    <message>
        <source>The centre of mass lies over the feet alone too, %1 inside.</source>
        <translation>仅以足支撑时质心也在足的上方，距边缘 %1。</translation>
    </message>
    <message>
        <source>Without the tail it would tip: the centre of mass lies %1 outside the feet.</source>
        <translation>没有尾部支撑就会倾倒：质心在足之外 %1。</translation>
    </message>
    <message>
        <source>With the tail %1 heavier, as the errors of its flesh and density allow, the centre of mass lies %2 farther back.</source>
        <translation>若尾部重 %1（其软组织和密度的误差所允许），质心后移 %2。</translation>
    </message>
    <message>
        <source>With the tail %1 heavier, as the errors of its flesh and density allow, the centre of mass lies %2 farther ahead.</source>
        <translation>若尾部重 %1（其软组织和密度的误差所允许），质心前移 %2。</translation>
    </message>
    <message>
        <source>Errors by part, of density and of the flesh outside the bones' hull, are program defaults, no source; the error of the whole is that of the method.</source>
        <translation>各部分的误差（密度以及骨骼凸包之外的软组织）为程序默认值，无出处；整体的误差是该方法的误差。</translation>
    </message>
    <message>
        <source>mean error %1, not a bound: single animals lie farther off</source>
        <translation>平均误差 %1，并非界限：个别动物偏差更大</translation>
    </message>
    <message>
        <source>no feet</source>
        <translation>没有足</translation>
    </message>
    <message>
        <source>off the ground</source>
        <translation>离开地面</translation>
    </message>
    <message>
        <source>balanced, %1 inside</source>
        <translation>平衡，内侧余量 %1</translation>
    </message>
    <message>
        <source>tips, %1 outside</source>
        <translation>倾倒，超出 %1</translation>
    </message>
    <message>
        <source>left zygapophyseal overlap %1</source>
        <translation>左侧关节面重叠 %1</translation>
    </message>
    <message>
        <source>right zygapophyseal overlap %1</source>
        <translation>右侧关节面重叠 %1</translation>
    </message>
    <message>
        <source>zygapophyseal overlap %1 on both sides</source>
        <translation>两侧关节面重叠 %1</translation>
    </message>
    <message>
        <source>zygapophyseal overlap %1</source>
        <translation>关节面重叠 %1</translation>
    </message>
    <message>
        <source>zygapophyseal overlap %1 on that side</source>
        <translation>该侧关节面重叠 %1</translation>
    </message>
    <message>
        <source>zygapophyseal overlap %1 on the other side</source>
        <translation>另一侧关节面重叠 %1</translation>
    </message>
    <message>
        <source>left zygapophyseal overlap across the facet %1</source>
        <translation>左侧关节面横向重叠 %1</translation>
    </message>
    <message>
        <source>right zygapophyseal overlap across the facet %1</source>
        <translation>右侧关节面横向重叠 %1</translation>
    </message>
    <message>
        <source>zygapophyseal overlap across the facet %1 on both sides</source>
        <translation>两侧关节面横向重叠 %1</translation>
    </message>
    <message>
        <source>zygapophyseal overlap across the facet %1</source>
        <translation>关节面横向重叠 %1</translation>
    </message>
    <message>
        <source>zygapophyseal overlap across the facet %1 on that side</source>
        <translation>该侧关节面横向重叠 %1</translation>
    </message>
    <message>
        <source>zygapophyseal overlap across the facet %1 on the other side</source>
        <translation>对侧关节面横向重叠 %1</translation>
    </message>
    <message>
        <source>left facets interpenetrate by %1</source>
        <translation>左侧关节面相互嵌入 %1</translation>
    </message>
    <message>
        <source>right facets interpenetrate by %1</source>
        <translation>右侧关节面相互嵌入 %1</translation>
    </message>
    <message>
        <source>facets interpenetrate by %1 on both sides</source>
        <translation>两侧关节面相互嵌入 %1</translation>
    </message>
    <message>
        <source>facets interpenetrate by %1</source>
        <translation>关节面相互嵌入 %1</translation>
    </message>
    <message>
        <source>facets interpenetrate by %1 on that side</source>
        <translation>该侧关节面相互嵌入 %1</translation>
    </message>
    <message>
        <source>facets interpenetrate by %1 on the other side</source>
        <translation>另一侧关节面相互嵌入 %1</translation>
    </message>
    <message>
        <source>left facets separate by %1</source>
        <translation>左侧关节面分离 %1</translation>
    </message>
    <message>
        <source>right facets separate by %1</source>
        <translation>右侧关节面分离 %1</translation>
    </message>
    <message>
        <source>facets separate by %1 on both sides</source>
        <translation>两侧关节面分离 %1</translation>
    </message>
    <message>
        <source>facets separate by %1</source>
        <translation>关节面分离 %1</translation>
    </message>
    <message>
        <source>facets separate by %1 on that side</source>
        <translation>该侧关节面分离 %1</translation>
    </message>
    <message>
        <source>facets separate by %1 on the other side</source>
        <translation>另一侧关节面分离 %1</translation>
    </message>
    <message>
        <source>spine of %1</source>
        <translation>%1 的神经棘</translation>
    </message>
    <message>
        <source>zygapophysis of %1</source>
        <translation>%1 的关节突</translation>
    </message>
    <message>
        <source>transverse process of %1</source>
        <translation>%1 的横突</translation>
    </message>
    <message>
        <source>rib of %1</source>
        <translation>%1 的肋骨</translation>
    </message>
    <message>
        <source>arch of %1</source>
        <translation>%1 的椎弓</translation>
    </message>
    <message>
        <source>centrum of %1</source>
        <translation>%1 的椎体</translation>
    </message>
    <message>
        <source>spines of %1 and %2</source>
        <translation>%1 与 %2 的神经棘</translation>
    </message>
    <message>
        <source>zygapophyses of %1 and %2</source>
        <translation>%1 与 %2 的关节突</translation>
    </message>
    <message>
        <source>transverse processes of %1 and %2</source>
        <translation>%1 与 %2 的横突</translation>
    </message>
    <message>
        <source>ribs of %1 and %2</source>
        <translation>%1 与 %2 的肋骨</translation>
    </message>
    <message>
        <source>arches of %1 and %2</source>
        <translation>%1 与 %2 的椎弓</translation>
    </message>
    <message>
        <source>centra of %1 and %2</source>
        <translation>%1 与 %2 的椎体</translation>
    </message>
    <message>
        <source>%1 has no left prezygapophyseal facet</source>
        <translation>%1 缺少左前关节面</translation>
    </message>
    <message>
        <source>%1 has no right prezygapophyseal facet</source>
        <translation>%1 缺少右前关节面</translation>
    </message>
    <message>
        <source>%1 has no left postzygapophyseal facet</source>
        <translation>%1 缺少左后关节面</translation>
    </message>
    <message>
        <source>%1 has no right postzygapophyseal facet</source>
        <translation>%1 缺少右后关节面</translation>
    </message>
    <message>
        <source>left lateral flexion</source>
        <translation>左侧屈</translation>
    </message>
    <message>
        <source>right lateral flexion</source>
        <translation>右侧屈</translation>
    </message>
    <message>
        <source>axial rotation (left side up)</source>
        <translation>轴向旋转（左侧抬起）</translation>
    </message>
    <message>
        <source>axial rotation (right side up)</source>
        <translation>轴向旋转（右侧抬起）</translation>
    </message>
    <message>
        <source>closing</source>
        <translation>闭合</translation>
    </message>
    <message>
        <source>opening</source>
        <translation>张开</translation>
    </message>
    <message>
        <source>left swing</source>
        <translation>左摆</translation>
    </message>
    <message>
        <source>right swing</source>
        <translation>右摆</translation>
    </message>
    <message>
        <source>flexion</source>
        <translation>屈曲</translation>
    </message>
    <message>
        <source>extension</source>
        <translation>伸展</translation>
    </message>
    <message>
        <source>abduction</source>
        <translation>外展</translation>
    </message>
    <message>
        <source>adduction</source>
        <translation>内收</translation>
    </message>
    <message>
        <source>inward rotation</source>
        <translation>内旋</translation>
    </message>
    <message>
        <source>outward rotation</source>
        <translation>外旋</translation>
    </message>
    <message>
        <source>left side up</source>
        <translation>左侧抬起</translation>
    </message>
    <message>
        <source>right side up</source>
        <translation>右侧抬起</translation>
    </message>
    <message>
        <source>program default, no source</source>
        <translation>程序默认值，无出处</translation>
    </message>
    <message>
        <source>%1 and %2</source>
        <translation>%1与%2</translation>
    </message>
    <message>
        <source>no facets and no typed limits</source>
        <translation>没有关节面，也没有给定限度</translation>
    </message>
    <message>
        <source>nothing stops it within a right angle</source>
        <translation>在直角之内没有阻碍</translation>
    </message>
    <message>
        <source>limit %1 (%2)</source>
        <translation>限度 %1（%2）</translation>
    </message>
    <message>
        <source>bones collide: %1, %2</source>
        <translation>骨骼相撞：%1，%2</translation>
    </message>
    <message>
        <source>%1 %2 %3: %4</source>
        <translation>%1 %2 %3：%4</translation>
    </message>
    <message>
        <source>with %1 %2</source>
        <translation>伴随%1 %2</translation>
    </message>
    <message>
        <source>%1: %2 is a scan, the facets of %3 are inferred; a verdict on the joint is one against an inferred neighbour</source>
        <translation>%1：%2 为扫描，%3 的关节面为推断；对该关节的判定即对照推断的邻骨</translation>
    </message>
    <message>
        <source>%1: the scans' facets lie up to %2 off each other in neutral; that much is granted in every pose</source>
        <translation>%1：在中性位中两块扫描的关节面彼此相差至多 %2；任何姿势都容许这一差距</translation>
    </message>
    <message>
        <source>%1: poor articulation, facet centres %2 apart; the scans' facets lie up to %3 off each other, which is granted in every pose</source>
        <translation>%1：关节连接不佳，关节面中心相距 %2；两块扫描的关节面彼此相差至多 %3，任何姿势都容许这一差距</translation>
    </message>
    <message>
        <source>%1: poor articulation, facet centres %2 apart</source>
        <translation>%1：关节吻合不佳，关节面中心相距 %2</translation>
    </message>
    <message>
        <source>%1 cannot be articulated: %2</source>
        <translation>%1 无法关节化：%2</translation>
    </message>
    <message>
        <source>%1 cannot be articulated: the facets of %2 and %3 face the same way</source>
        <translation>%1 无法关节化：%2 与 %3 的关节面朝向同一侧</translation>
    </message>
    <message>
        <source>%1 cannot be articulated: no position within a right angle brings the facets of %2 and %3 together</source>
        <translation>%1 无法关节化：在直角之内没有位置能使 %2 与 %3 的关节面相接</translation>
    </message>
    <message>
        <source>the ray tracer cannot start on this processor</source>
        <translation>光线追踪无法在此处理器上启动</translation>
    </message>
    <message>
        <source>there is not enough memory for %1; choose a smaller width or fewer passes</source>
        <translation>内存不足以容纳 %1；请选择较小的宽度或较少的分层图</translation>
    </message>
    <message>
        <source>cannot save %1: %2; make room or choose another folder</source>
        <translation>无法保存 %1：%2；请腾出空间或选择其他文件夹</translation>
    </message>
    <message>
        <source>Taylor &amp; Wedel 2013, PLoS ONE 8(10):e78214</source>
        <translation>Taylor &amp; Wedel 2013, PLoS ONE 8(10):e78214</translation>
    </message>
    <message>
        <source>Taylor &amp; Wedel 2013, PLoS ONE 8(10):e78214, quoted second hand</source>
        <translation>Taylor 与 Wedel 2013，PLoS ONE 8(10):e78214，转引</translation>
    </message>
    <message>
        <source>Stevens &amp; Parrish 1999, Science 284:798. Tested on ostriches by Cobley, Rayfield &amp; Barrett 2013, PLoS ONE 8(8):e72187: it does not convey their flexibility</source>
        <translation>Stevens &amp; Parrish 1999, Science 284:798。Cobley, Rayfield &amp; Barrett 2013, PLoS ONE 8(8):e72187 以鸵鸟检验：该规则未能反映其灵活性</translation>
    </message>
    <message>
        <source>Kambic, Biewener &amp; Pierce 2017, Front. Zool. 14:37</source>
        <translation>Kambic, Biewener &amp; Pierce 2017, Front. Zool. 14:37</translation>
    </message>
    <message>
        <source>Rhea</source>
        <translation>美洲鸵</translation>
    </message>
    <message>
        <source>Sauroposeidon</source>
        <translation>波塞东龙</translation>
    </message>
    <message>
        <source>Turkey</source>
        <translation>火鸡</translation>
    </message>
    <message>
        <source>Ostrich</source>
        <translation>鸵鸟</translation>
    </message>
    <message>
        <source>Horse</source>
        <translation>马</translation>
    </message>
    <message>
        <source>Alligator</source>
        <translation>短吻鳄</translation>
    </message>
    <message>
        <source>Juvenile Apatosaurus, low</source>
        <translation>幼年迷惑龙，下限</translation>
    </message>
    <message>
        <source>Juvenile Apatosaurus, high</source>
        <translation>幼年迷惑龙，上限</translation>
    </message>
    <message>
        <source>Juvenile giraffe</source>
        <translation>幼年长颈鹿</translation>
    </message>
    <message>
        <source>published rule</source>
        <translation>已发表的规则</translation>
    </message>
    <message>
        <source>half of the published rule</source>
        <translation>已发表规则的一半</translation>
    </message>
    <message>
        <source>facets may all but part, seen in living turkeys</source>
        <translation>关节面几乎分离亦可，见于现生火鸡</translation>
    </message>
    <message>
        <source>left zygapophyseal overlap %1 (minimum %2)</source>
        <translation>左侧关节面重叠 %1（最小 %2）</translation>
    </message>
    <message>
        <source>right zygapophyseal overlap %1 (minimum %2)</source>
        <translation>右侧关节面重叠 %1（最小 %2）</translation>
    </message>
    <message>
        <source>zygapophyseal overlap %1 left, %2 right (minimum %3)</source>
        <translation>关节面重叠左 %1、右 %2（最小 %3）</translation>
    </message>
    <message>
        <source>left zygapophyseal overlap by area %1 (minimum %2)</source>
        <translation>左侧关节面面积重叠 %1（最小 %2）</translation>
    </message>
    <message>
        <source>right zygapophyseal overlap by area %1 (minimum %2)</source>
        <translation>右侧关节面面积重叠 %1（最小 %2）</translation>
    </message>
    <message>
        <source>zygapophyseal overlap by area %1 left, %2 right (minimum %3)</source>
        <translation>关节面面积重叠左 %1、右 %2（最小 %3）</translation>
    </message>
    <message>
        <source>left zygapophyseal overlap across the facet %1 (minimum %2)</source>
        <translation>左侧关节面横向重叠 %1（最小 %2）</translation>
    </message>
    <message>
        <source>right zygapophyseal overlap across the facet %1 (minimum %2)</source>
        <translation>右侧关节面横向重叠 %1（最小 %2）</translation>
    </message>
    <message>
        <source>zygapophyseal overlap across the facet %1 left, %2 right (minimum %3)</source>
        <translation>关节面横向重叠左 %1、右 %2（最小 %3）</translation>
    </message>
    <message>
        <source>left facets interpenetrate by %1 (tolerated %2)</source>
        <translation>左侧关节面相互嵌入 %1（容许 %2）</translation>
    </message>
    <message>
        <source>right facets interpenetrate by %1 (tolerated %2)</source>
        <translation>右侧关节面相互嵌入 %1（容许 %2）</translation>
    </message>
    <message>
        <source>facets interpenetrate by %1 left, %2 right (tolerated %3)</source>
        <translation>关节面相互嵌入左 %1、右 %2（容许 %3）</translation>
    </message>
    <message>
        <source>left facets separate by %1 (tolerated %2)</source>
        <translation>左侧关节面分离 %1（容许 %2）</translation>
    </message>
    <message>
        <source>right facets separate by %1 (tolerated %2)</source>
        <translation>右侧关节面分离 %1（容许 %2）</translation>
    </message>
    <message>
        <source>facets separate by %1 left, %2 right (tolerated %3)</source>
        <translation>关节面分离左 %1、右 %2（容许 %3）</translation>
    </message>
    <message>
        <source>%1 %2 (limit %3, %4)</source>
        <translation>%1 %2（限度 %3，%4）</translation>
    </message>
    <message>
        <source>%1 interpenetrate by %2 (tolerated %3)</source>
        <translation>%1相互嵌入 %2（容许 %3）</translation>
    </message>
    <message>
        <source>%1 %2 (limit %3)</source>
        <translation>%1 %2（限度 %3）</translation>
    </message>
    <message>
        <source>%1 %2 (limit %3 by itself)</source>
        <translation>%1 %2（单独时限度 %3）</translation>
    </message>
    <message>
        <source>%1 %2 (minimum %3 %4)</source>
        <translation>%1 %2（最小为%3 %4）</translation>
    </message>
    <message>
        <source>zygapophyseal overlap by area %1 left, %2 right</source>
        <translation>关节面面积重叠左 %1、右 %2</translation>
    </message>
    <message>
        <source>zygapophyseal overlap %1 left, %2 right</source>
        <translation>关节面重叠左 %1、右 %2</translation>
    </message>
    <message>
        <source>near limit</source>
        <translation>接近极限</translation>
    </message>
    <message>
        <source>bones collide</source>
        <translation>骨骼相撞</translation>
    </message>
    <message>
        <source>a scan beside a bone whose facets are inferred</source>
        <translation>扫描与关节面为推断的骨骼相邻</translation>
    </message>
    <message>
        <source>the right facets are not known</source>
        <translation>右侧关节面未知</translation>
    </message>
    <message>
        <source>the left facets are not known</source>
        <translation>左侧关节面未知</translation>
    </message>
    <message>
        <source>in the neutral pose</source>
        <translation>在中性姿态下</translation>
    </message>
    <message>
        <source>and the neutral pose is out of range as well</source>
        <translation>且中性姿态也超出活动范围</translation>
    </message>
    <message>
        <source>each within range by itself but not together</source>
        <translation>各自在活动范围内，但合在一起不在</translation>
    </message>
    <message>
        <source>all angles zero</source>
        <translation>全部角度为零</translation>
    </message>
    <message>
        <source>%1 %2: %3</source>
        <translation>%1 %2：%3</translation>
    </message>
    <message>
        <source>present pose</source>
        <translation>当前姿态</translation>
    </message>
    <message>
        <source>%1 of the centrum's length</source>
        <translation>椎体长度的 %1</translation>
    </message>
    <message>
        <source>%1 to %2, middle %3</source>
        <translation>%1 至 %2，居中 %3</translation>
    </message>
    <message>
        <source>%1 of %2 bones preserved: %3; counting mirrored counterparts %4: %5</source>
        <translation>%2 块骨中已保存 %1 块：%3；计入对侧镜像为 %4 块：%5</translation>
    </message>
    <message>
        <source>Not an engineering document; local codes and licensed practice decide.</source>
        <translation>并非工程文件；以当地规范和持证从业者的意见为准。</translation>
    </message>
    <message>
        <source>unit %1: the bone is %2 times the animal's</source>
        <translation>单位 %1：该骨骼为动物的 %2 倍</translation>
    </message>
    <message>
        <source>unit guessed %1, in which the bone is %2 times the animal's; no other unit comes near</source>
        <translation>推测为单位 %1，该骨骼为动物的 %2 倍；其他单位相差甚远</translation>
    </message>
    <message>
        <source>unit guessed %1, in which the bone is %2 times the animal's; not sure</source>
        <translation>推测为单位 %1，该骨骼为动物的 %2 倍；不确定</translation>
    </message>
    <message>
        <source>unit %1: the middle one of %2 bones is %3 times the animal's</source>
        <translation>单位 %1：%2 块骨骼的中位数为动物的 %3 倍</translation>
    </message>
    <message>
        <source>unit of all guessed %1, in which the middle one of %2 bones is %3 times the animal's; no other unit comes near</source>
        <translation>全部推测为单位 %1，其中 %2 块骨骼的中位数为动物的 %3 倍；其他单位相差甚远</translation>
    </message>
    <message>
        <source>unit of all guessed %1, in which the middle one of %2 bones is %3 times the animal's; not sure</source>
        <translation>全部推测为单位 %1，其中 %2 块骨骼的中位数为动物的 %3 倍；不确定</translation>
    </message>
    <message>
        <source>these bones are about %1 times as large as the animal's</source>
        <translation>这些骨骼约为动物骨骼的 %1 倍</translation>
    </message>
    <message>
        <source>the animal's bones are about %1 times as large as these</source>
        <translation>动物的骨骼约为这些骨骼的 %1 倍</translation>
    </message>
    <message>
        <source>beside the others about %1 times too large: another unit, or another bone?</source>
        <translation>与其他骨骼相比约大 %1 倍：是另一个单位，还是另一块骨骼？</translation>
    </message>
    <message>
        <source>beside the others about %1 times too small: another unit, or another bone?</source>
        <translation>与其他骨骼相比约小 %1 倍：是另一个单位，还是另一块骨骼？</translation>
    </message>
    <message numerus="yes">
        <source>%n bytes</source>
        <translation>
            <numerusform>%n 字节</numerusform>
        </translation>
    </message>
    <message>
        <source>it is a folder</source>
        <translation>它是文件夹</translation>
    </message>
    <message>
        <source>it is not a plain file</source>
        <translation>它不是普通文件</translation>
    </message>
    <message>
        <source>it is %1 large, the most that is read is %2</source>
        <translation>它有 %1，最多只读 %2</translation>
    </message>
    <message>
        <source>it cannot be read</source>
        <translation>无法读取</translation>
    </message>
    <message>
        <source>it is empty</source>
        <translation>它是空的</translation>
    </message>
    <message>
        <source>it is in no mesh format that is read here</source>
        <translation>它不是这里能读的网格格式</translation>
    </message>
    <message>
        <source>there is no surface in it</source>
        <translation>其中没有表面</translation>
    </message>
    <message>
        <source>none of its triangles can be used</source>
        <translation>它的三角形都不能用</translation>
    </message>
    <message>
        <source>its counts are beyond all measure: it is damaged</source>
        <translation>它的计数大得离谱：它已损坏</translation>
    </message>
    <message>
        <source>it has more vertices than can be counted here</source>
        <translation>它的顶点多得无法计数</translation>
    </message>
    <message>
        <source>its header gives '%1' as the number of %2</source>
        <translation>它的文件头把“%1”写作%2的数目</translation>
    </message>
    <message>
        <source>%1 elements</source>
        <translation>%1 元素</translation>
    </message>
    <message>
        <source>it declares %1 %2, which need at least %3 each, but it has only %4 left for them: it is damaged or cut short</source>
        <translation>它声明有 %1 个%2，每个至少需要 %3，但只剩 %4：它已损坏或不完整</translation>
    </message>
    <message>
        <source>its header names a type '%1', which PLY does not have</source>
        <translation>它的文件头写了类型“%1”，PLY 没有这种类型</translation>
    </message>
    <message>
        <source>its PLY header does not end</source>
        <translation>它的 PLY 文件头没有结束</translation>
    </message>
    <message>
        <source>its face %1 names vertex %2, but there are only %3, counted from 0: it is damaged</source>
        <translation>它的面 %1 指到顶点 %2，但从 0 数起只有 %3 个：它已损坏</translation>
    </message>
    <message>
        <source>it is too short for an STL file</source>
        <translation>它太短，不会是 STL 文件</translation>
    </message>
    <message>
        <source>it is too short for a GLB file</source>
        <translation>它太短，不会是 GLB 文件</translation>
    </message>
    <message>
        <source>its JSON:%1, column %2: %3</source>
        <translation>它的 JSON，第 %1 行第 %2 列：%3</translation>
    </message>
    <message>
        <source>its JSON is cut short</source>
        <translation>它的 JSON 不完整</translation>
    </message>
    <message>
        <source>it says it is %1 long, but has %2: it is cut short</source>
        <translation>它自称长 %1，实有 %2：它不完整</translation>
    </message>
    <message>
        <source>its meshes are compressed (%1), which is not read here; export it without compression</source>
        <translation>它的网格是压缩的（%1），这里不能读；请不压缩地导出</translation>
    </message>
    <message>
        <source>vertices</source>
        <translation>顶点</translation>
    </message>
    <message>
        <source>faces</source>
        <translation>面</translation>
    </message>
    <message>
        <source>triangles</source>
        <translation>三角形</translation>
    </message>
    <message>
        <source>no temporary folder can be made in %1</source>
        <translation>无法在 %1 中建立临时文件夹</translation>
    </message>
    <message>
        <source>cannot start %1: %2</source>
        <translation>无法启动 %1：%2</translation>
    </message>
    <message>
        <source>reading it takes longer than the %1 seconds allowed</source>
        <translation>读取它所需的时间超过允许的 %1 秒</translation>
    </message>
    <message>
        <source>reading it took more than %1 s of processor time</source>
        <translation>读取它所用的处理器时间超过 %1 s</translation>
    </message>
    <message>
        <source>the system stopped the process that read it, most likely for want of memory</source>
        <translation>系统终止了读取它的进程，多半是因为内存不足</translation>
    </message>
    <message>
        <source>its mesh is larger than the %1 allowed</source>
        <translation>它的网格大于允许的 %1</translation>
    </message>
    <message>
        <source>it is damaged, or of a kind that is not understood: the process that read it broke down (%1); nothing else is harmed</source>
        <translation>文件已损坏，或属于不认识的一种：读取它的进程崩溃了（%1）；其他一切无损</translation>
    </message>
    <message>
        <source>reading it needs more memory than the %1 allowed</source>
        <translation>读取它所需的内存超过允许的 %1</translation>
    </message>
    <message>
        <source>reading its %1 triangles would need about %2 of memory, more than the %3 allowed: thin it first in the program that made it</source>
        <translation>读取其 %1 个三角形约需 %2 内存，超过允许的 %3：请先在生成它的程序中减少三角形</translation>
    </message>
    <message>
        <source>the process that read it ended with code %1</source>
        <translation>读取它的进程以代码 %1 结束</translation>
    </message>
    <message>
        <source>the process that read it gave a damaged answer</source>
        <translation>读取它的进程给出了损坏的回答</translation>
    </message>
    <message>
        <source>there is no room for it in %1</source>
        <translation>%1 中没有放它的空间</translation>
    </message>
    <message>
        <source>there is no mesh file in this folder</source>
        <translation>此文件夹中没有网格文件</translation>
    </message>
    <message>
        <source>none of the files is known by its name to be a bone of such an animal</source>
        <translation>没有一个文件的名称表明它是此类动物的骨骼</translation>
    </message>
    <message>
        <source>its name does not tell which bone it is</source>
        <translation>其名称没有表明是哪块骨骼</translation>
    </message>
    <message>
        <source>it may be %1, but its name does not say so surely: %2</source>
        <translation>可能是 %1，但其名称不能确定：%2</translation>
    </message>
    <message>
        <source>the animal has no %1</source>
        <translation>该动物没有 %1</translation>
    </message>
    <message>
        <source>it would be %1, which %2 is already</source>
        <translation>它会是 %1，而 %2 已经是</translation>
    </message>
    <message>
        <source>%2 is too different from %1 for its marks</source>
        <translation>%2 与 %1 差异过大，无法转移其标记</translation>
    </message>
    <message>
        <source>%1: there is too little surface where it should lie</source>
        <translation>%1：它应在之处表面太少</translation>
    </message>
    <message>
        <source>nothing has been brushed</source>
        <translation>还没有刷任何地方</translation>
    </message>
    <message>
        <source>the patch is flat: no sphere goes through it</source>
        <translation>所刷的面是平的：没有球面能通过它</translation>
    </message>
    <message>
        <source>a sphere needs at least four triangles brushed</source>
        <translation>球面至少需要刷四个三角形</translation>
    </message>
    <message>
        <source>a ring needs at least three places</source>
        <translation>环至少需要三处</translation>
    </message>
    <message>
        <source>the places lie along one line: click round the rim</source>
        <translation>各处在一条直线上：请绕边缘点击</translation>
    </message>
    <message>
        <source>%1 lies %2 off the mid-plane of the other marks; on a bone of this size that is doubted from %3 on (program default, no source)</source>
        <translation>%1 偏离其他标记的中矢面 %2；对这一大小的骨骼，自 %3 起存疑（程序默认值，无出处）</translation>
    </message>
    <message>
        <source>%1 lies %3 off the mirror image of %2; on a bone of this size one of the two is doubted from %4 on (program default, no source)</source>
        <translation>%1 偏离 %2 的镜像 %3；对这一大小的骨骼，自 %4 起两者之一存疑（程序默认值，无出处）</translation>
    </message>
    <message>
        <source>%1 and %2 differ in area %3 times; one of the two is doubted from %4 times on (program default, no source)</source>
        <translation>%1 与 %2 的面积相差 %3 倍；自 %4 倍起两者之一存疑（程序默认值，无出处）</translation>
    </message>
    <message>
        <source>%1 is turned by %3 from the mirror image of %2; one of the two is doubted from %4 on (program default, no source)</source>
        <translation>%1 相对 %2 的镜像转了 %3；自 %4 起两者之一存疑（程序默认值，无出处）</translation>
    </message>
    <message>
        <source>%1 lies on the other side of the mid-plane</source>
        <translation>%1 位于中矢面的另一侧</translation>
    </message>
    <message>
        <source>%1: the surface lies %2 off its plane; at this size it is doubted to be one facet from %3 on (program default, no source)</source>
        <translation>%1：表面偏离其平面 %2；以此大小，自 %3 起不像一个关节面（程序默认值，无出处）</translation>
    </message>
    <message>
        <source>%1: the places lie %2 off the ball or ring; on a bone of this size the fit is doubted from %3 on (program default, no source)</source>
        <translation>%1：所标位置偏离球或环 %2；对这一大小的骨骼，自 %3 起拟合存疑（程序默认值，无出处）</translation>
    </message>
    <message>
        <source>%1: the centre is only known to %2; on a bone of this size it is doubted from %3 on (program default, no source). Brush more of the curve</source>
        <translation>%1：中心仅知到 %2；对这一大小的骨骼，自 %3 起存疑（程序默认值，无出处）。请多刷一些曲面</translation>
    </message>
    <message>
        <source>%1 lies %2 off the surface; on a bone of this size that is doubted from %3 on (program default, no source)</source>
        <translation>%1 偏离表面 %2；对这一大小的骨骼，自 %3 起存疑（程序默认值，无出处）</translation>
    </message>
    <message>
        <source>%1 has surface under only %2 of its outline</source>
        <translation>%1 的轮廓下仅 %2 有表面</translation>
    </message>
    <message>
        <source>%1 lies %2 from the nearest surface; on a bone of this size that is doubted from %3 on (program default, no source)</source>
        <translation>%1 距最近的表面 %2；对这一大小的骨骼，自 %3 起存疑（程序默认值，无出处）</translation>
    </message>
    <message>
        <source>%1 faces the wrong way for its role</source>
        <translation>%1 的朝向与其作用相反</translation>
    </message>
    <message>
        <source>%1 faces into the bone</source>
        <translation>%1 朝向骨内</translation>
    </message>
    <message>
        <source>a shear of %1 explains the marks: pairs are off by %2 as found, by %3 without it</source>
        <translation>%1 的剪切可以解释这些标记：成对偏差发现时为 %2，消除后为 %3</translation>
    </message>
    <message>
        <source>a compression of %1 explains the marks better than a shear: pairs are off by %2 as found, by %3 without it</source>
        <translation>%1 的压缩比剪切更能解释这些标记：成对偏差发现时为 %2，消除后为 %3</translation>
    </message>
    <message>
        <source>pairs are off by %1 only; from %2 on that tells a deformation (program default, no source)</source>
        <translation>成对偏差仅为 %1；自 %2 起才表明变形（程序默认值，无出处）</translation>
    </message>
    <message>
        <source>pairs are off by %1, and by %2 after a correction: it would only follow the scatter of the marks</source>
        <translation>成对偏差为 %1，校正后为 %2：校正只会迁就标记的离散</translation>
    </message>
    <message>
        <source>the cranial bone</source>
        <translation>靠头侧的骨骼</translation>
    </message>
    <message>
        <source>the caudal bone</source>
        <translation>靠尾侧的骨骼</translation>
    </message>
    <message>
        <source>%1 has no surface</source>
        <translation>%1没有表面</translation>
    </message>
    <message>
        <source>the mesh of %1 is damaged: it names points that are not there</source>
        <translation>%1的网格已损坏：它引用了不存在的点</translation>
    </message>
    <message>
        <source>the mesh of %1 is inside out: turn its faces over</source>
        <translation>%1的网格内外颠倒：请翻转其面</translation>
    </message>
    <message>
        <source>the bones do not lie in articulation: within %1 of the smaller bone’s size nothing of them faces the other</source>
        <translation>骨骼没有按关节相接摆放：在较小骨骼尺寸的 %1 之内，没有彼此相对的表面</translation>
    </message>
    <message>
        <source>no ends of the centra were found that face each other: mark them by hand</source>
        <translation>未找到彼此相对的椎体端面：请手工标记</translation>
    </message>
    <message>
        <source>no facets were found beside the mid-plane: mark them by hand</source>
        <translation>在中矢面两侧未找到关节面：请手工标记</translation>
    </message>
    <message>
        <source>nothing is suggested at %1: %2</source>
        <translation>%1 处没有建议：%2</translation>
    </message>
    <message>
        <source>no bone was given that its cranial end meets with facets; by shape alone facets are not told from other flat parts: mark them by hand</source>
        <translation>没有给出与其前端以关节面相接的骨骼；仅凭形状无法将关节面与其他平坦部分区分：请手工标记</translation>
    </message>
    <message>
        <source>no bone was given that its caudal end meets with facets; by shape alone facets are not told from other flat parts: mark them by hand</source>
        <translation>没有给出与其后端以关节面相接的骨骼；仅凭形状无法将关节面与其他平坦部分区分：请手工标记</translation>
    </message>
    <message>
        <source>%1 was not found: mark it by hand</source>
        <translation>未找到%1：请手工标记</translation>
    </message>
    <message>
        <source>no ring of bone was found over the centrum: mark the neural canal by hand</source>
        <translation>在椎体上方没有找到骨环：请手工标记椎管</translation>
    </message>
    <message>
        <source>the cranial end of the centrum was not found by shape</source>
        <translation>未能按形状找到椎体的前端</translation>
    </message>
    <message>
        <source>the caudal end of the centrum was not found by shape</source>
        <translation>未能按形状找到椎体的后端</translation>
    </message>
    <message>
        <source>both bones lie in the same place: each has a frame of its own, and nothing tells how they met</source>
        <translation>两块骨骼位于同一处：各有自己的坐标系，无从得知它们如何相接</translation>
    </message>
    <message>
        <source>the mark %2 of %1 lies %3 beside its mesh: check the unit of the table and that of the scan</source>
        <translation>%1 的标记 %2 在其网格之外 %3：请核对表格与扫描的单位</translation>
    </message>
    <message>
        <source>the mark %2 of %1 lies %3 beside its mesh; multiplied by %4 all its marks would fit: check the unit of the table and that of the scan</source>
        <translation>%1 的标记 %2 在其网格之外 %3；乘以 %4 则其全部标记相符：请核对表格与扫描的单位</translation>
    </message>
    <message>
        <source>all marks of %1 lie in one spot of its mesh: check the unit of the table and that of the scan</source>
        <translation>%1 的全部标记都在其网格的同一点：请核对表格与扫描的单位</translation>
    </message>
    <message>
        <source>all marks of %1 lie in one spot of its mesh; multiplied by %2 they would fit: check the unit of the table and that of the scan</source>
        <translation>%1 的全部标记都在其网格的同一点；乘以 %2 则相符：请核对表格与扫描的单位</translation>
    </message>
    <message>
        <source>there are no bone meshes yet</source>
        <translation>还没有骨骼网格</translation>
    </message>
    <message>
        <source>none of the bones has a closed surface</source>
        <translation>没有一块骨骼有封闭的曲面</translation>
    </message>
    <message>
        <source>there are no bones to put a body guide around</source>
        <translation>没有可围绕其做体形参考的骨骼</translation>
    </message>
    <message>
        <source>a voxel of %1 would need about %2 of memory; the smallest that fits in %3 is %4</source>
        <translation>%1 的体素约需 %2 内存；%3 所能容纳的最小体素为 %4</translation>
    </message>
    <message>
        <source>a voxel of %1 is too coarse: nothing is left of the bones; try %2</source>
        <translation>%1 的体素太粗：骨骼什么都不剩；请试 %2</translation>
    </message>
    <message>
        <source>the ending must be .glb, .gltf, .obj, .ply, .stl or .dae</source>
        <translation>扩展名必须是 .glb、.gltf、.obj、.ply、.stl 或 .dae</translation>
    </message>
    <message>
        <source>the mesh library wrote no %1</source>
        <translation>网格库没有写出 %1</translation>
    </message>
    <message>
        <source>head and feet</source>
        <translation>头与足</translation>
    </message>
    <message>
        <source>neck base</source>
        <translation>颈基部</translation>
    </message>
    <message>
        <source>tail base</source>
        <translation>尾基部</translation>
    </message>
    <message>
        <source>upper limbs</source>
        <translation>四肢上段</translation>
    </message>
    <message>
        <source>lower limbs</source>
        <translation>四肢下段</translation>
    </message>
    <message>
        <source>%1: a figure is written as svg, pdf or png, numbers as json</source>
        <translation>%1：图写成 svg、pdf 或 png，数值写成 json</translation>
    </message>
    <message>
        <source>%1 in the file's unit</source>
        <translation>%1（文件的单位）</translation>
    </message>
    <message numerus="yes">
        <source>left out %n of %1 declared faces, which could not be used</source>
        <translation>
            <numerusform>所声明的 %1 个面中有 %n 个无法使用，已略去</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>dropped %n faces naming vertices that are not there</source>
        <translation>
            <numerusform>去掉了 %n 个指向不存在顶点的面</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>left out %n points and lines</source>
        <translation>
            <numerusform>略去了 %n 个点和线</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>dropped %n triangles naming vertices that are not there</source>
        <translation>
            <numerusform>去掉了 %n 个指向不存在顶点的三角形</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>dropped %n triangles with a corner that is no number</source>
        <translation>
            <numerusform>去掉了 %n 个有角点不是数的三角形</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>welded %n vertices standing at the same place as another</source>
        <translation>
            <numerusform>焊接了 %n 个与别的顶点同处一点的顶点</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>closed seams at %n vertices</source>
        <translation>
            <numerusform>在 %n 个顶点处合上了接缝</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>dropped %n triangles without area</source>
        <translation>
            <numerusform>去掉了 %n 个没有面积的三角形</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>dropped %n triangles given twice</source>
        <translation>
            <numerusform>去掉了 %n 个重复给出的三角形</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>turned %n triangles over to face as the rest</source>
        <translation>
            <numerusform>翻转了 %n 个三角形，使其与其余的朝向一致</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>turned %n surfaces over, inside out before</source>
        <translation>
            <numerusform>翻转了 %n 个原先内外颠倒的曲面</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>dropped %n vertices without triangles</source>
        <translation>
            <numerusform>去掉了 %n 个没有三角形的顶点</numerusform>
        </translation>
    </message>
    <message>
        <source>thinned from %1 to %2 triangles, no point moved by more than %3</source>
        <translation>三角形由 %1 个减至 %2 个，各点移动不超过 %3</translation>
    </message>
    <message>
        <source>vertex colours were left out</source>
        <translation>顶点颜色已略去</translation>
    </message>
    <message>
        <source>colours of faces were left out</source>
        <translation>面的颜色已略去</translation>
    </message>
    <message>
        <source>textures were left out</source>
        <translation>纹理已略去</translation>
    </message>
    <message numerus="yes">
        <source>%n holes left open, the longest border %1</source>
        <translation>
            <numerusform>留下 %n 个未封的孔，最长的边缘 %1</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n edges with more than two triangles</source>
        <translation>
            <numerusform>%n 条边有两个以上的三角形</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n edges where the surface is one-sided</source>
        <translation>
            <numerusform>%n 条边处曲面是单侧的</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n surfaces that are not connected</source>
        <translation>
            <numerusform>%n 个互不相连的曲面</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n hollows inside, counted off the volume</source>
        <translation>
            <numerusform>内有 %n 个空腔，已从体积中扣除</numerusform>
        </translation>
    </message>
    <message>
        <source>open borders: %1, at least %2 of the closed surface is missing</source>
        <translation>开放边界：%1，封闭表面至少缺失 %2</translation>
    </message>
    <message>
        <source>left side missing</source>
        <translation>缺左侧</translation>
    </message>
    <message>
        <source>left side missing: cranial half</source>
        <translation>缺左侧：颅侧半</translation>
    </message>
    <message>
        <source>left side missing: caudal half</source>
        <translation>缺左侧：尾侧半</translation>
    </message>
    <message>
        <source>right side missing</source>
        <translation>缺右侧</translation>
    </message>
    <message>
        <source>right side missing: cranial half</source>
        <translation>缺右侧：颅侧半</translation>
    </message>
    <message>
        <source>right side missing: caudal half</source>
        <translation>缺右侧：尾侧半</translation>
    </message>
    <message>
        <source>%1 of the surface has no counterpart on the other side</source>
        <translation>表面的 %1 在另一侧没有对应部分</translation>
    </message>
    <message>
        <source>; in doubt: %1</source>
        <translation>；存疑：%1</translation>
    </message>
    <message>
        <source>cartilage of the neck: %1 of the centra's length, as %2 of its joints show (%3 to %4)</source>
        <translation>颈部软骨：椎体长度的 %1，由其 %2 个关节显示（%3 至 %4）</translation>
    </message>
    <message>
        <source>cartilage of the trunk: %1 of the centra's length, as %2 of its joints show (%3 to %4)</source>
        <translation>躯干软骨：椎体长度的 %1，由其 %2 个关节显示（%3 至 %4）</translation>
    </message>
    <message>
        <source>cartilage of the tail: %1 of the centra's length, as %2 of its joints show (%3 to %4)</source>
        <translation>尾部软骨：椎体长度的 %1，由其 %2 个关节显示（%3 至 %4）</translation>
    </message>
    <message>
        <source>%1: marks carried over from %2: %3, the surfaces %4 of the bone's size apart</source>
        <translation>%1：自 %2 转移的标记：%3，两表面相距骨骼大小的 %4</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 / %2</translation>
    </message>
    <message>
        <source>%1 is left out: %2</source>
        <translation>%1 已略去：%2</translation>
    </message>
    <message>
        <source>The scans are inside the project file.</source>
        <translation>扫描就在项目文件之中。</translation>
    </message>
    <message>
        <source>The scans are in the new folder %1; it belongs to the project: move both together.</source>
        <translation>扫描在新文件夹 %1 中；它属于项目：请一起移动。</translation>
    </message>
    <message>
        <source>The scans are in the folder %1; it belongs to the project: move both together.</source>
        <translation>扫描在文件夹 %1 中；它属于项目：请一起移动。</translation>
    </message>
    <message>
        <source>In the place of a scan lay another file; it is kept as %1.</source>
        <translation>扫描的位置上原有另一个文件；它保留为 %1。</translation>
    </message>
    <message>
        <source>Without the scans that could not be read: %1.</source>
        <translation>不含无法读取的扫描：%1。</translation>
    </message>
    <message>
        <source>One closed surface: %1, %2, %3, voxel %4.</source>
        <translation>一个封闭曲面：%1，%2，%3，体素 %4。</translation>
    </message>
    <message numerus="yes">
        <source>%n triangles</source>
        <translation>
            <numerusform>%n 个三角形</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n separate pieces</source>
        <translation>
            <numerusform>%n 个分开的部分</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n closed hollows were filled.</source>
        <translation>
            <numerusform>填实了 %n 个封闭的空腔。</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n specks smaller than eight voxels left out.</source>
        <translation>
            <numerusform>略去了 %n 个小于八个体素的碎屑。</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Holes in %n bones were closed over.</source>
        <translation>
            <numerusform>封上了 %n 块骨骼的孔。</numerusform>
        </translation>
    </message>
    <message>
        <source>Left out because their surfaces enclose nothing: %1.</source>
        <translation>因曲面不围成任何空间而略去：%1。</translation>
    </message>
    <message>
        <source>Joints left open because the bones stand too far apart: %1.</source>
        <translation>因骨骼相距太远而未填的关节：%1。</translation>
    </message>
    <message>
        <source>Body guide: %1, %2. A guide, not anatomy.</source>
        <translation>体形参考面：%1，%2。只是参考，并非解剖。</translation>
    </message>
    <message>
        <source>%1 ahead of the base</source>
        <translation>根部前方 %1</translation>
    </message>
    <message>
        <source>%1 ahead of the base and %2 to the left</source>
        <translation>根部前方 %1、偏左 %2</translation>
    </message>
    <message>
        <source>%1 ahead of the base and %2 to the right</source>
        <translation>根部前方 %1、偏右 %2</translation>
    </message>
    <message>
        <source>%1 behind the base</source>
        <translation>根部后方 %1</translation>
    </message>
    <message>
        <source>%1 behind the base and %2 to the left</source>
        <translation>根部后方 %1、偏左 %2</translation>
    </message>
    <message>
        <source>%1 behind the base and %2 to the right</source>
        <translation>根部后方 %1、偏右 %2</translation>
    </message>
    <message>
        <source>Standing alert</source>
        <translation>警觉站立</translation>
    </message>
    <message>
        <source>Browsing high</source>
        <translation>高处取食</translation>
    </message>
    <message>
        <source>Drinking</source>
        <translation>饮水</translation>
    </message>
    <message>
        <source>Walking 1: left hind swings</source>
        <translation>行走 1：左后肢摆动</translation>
    </message>
    <message>
        <source>Walking 2: left fore swings</source>
        <translation>行走 2：左前肢摆动</translation>
    </message>
    <message>
        <source>Walking 3: right hind swings</source>
        <translation>行走 3：右后肢摆动</translation>
    </message>
    <message>
        <source>Walking 4: right fore swings</source>
        <translation>行走 4：右前肢摆动</translation>
    </message>
    <message>
        <source>Rearing</source>
        <translation>后肢直立</translation>
    </message>
    <message>
        <source>Four feet on the ground, the neck raised from its base.</source>
        <translation>四足着地，颈部自根部抬起。</translation>
    </message>
    <message>
        <source>The head at the maximum height within range, over four planted feet.</source>
        <translation>四足着地，头部处于活动范围内的最大高度。</translation>
    </message>
    <message>
        <source>The snout at the ground; forelimbs give way only if the neck falls short.</source>
        <translation>吻端触地；只有颈部不够时前肢才让位。</translation>
    </message>
    <message>
        <source>First of four moments of a lateral sequence.</source>
        <translation>侧序步态四个时刻之一。</translation>
    </message>
    <message>
        <source>Second of four moments of a lateral sequence.</source>
        <translation>侧序步态四个时刻之二。</translation>
    </message>
    <message>
        <source>Third of four moments of a lateral sequence.</source>
        <translation>侧序步态四个时刻之三。</translation>
    </message>
    <message>
        <source>Fourth of four moments of a lateral sequence.</source>
        <translation>侧序步态四个时刻之四。</translation>
    </message>
    <message>
        <source>On the hind feet, the tail as a prop on the ground, forelimbs hanging.</source>
        <translation>后足站立，尾部撑地，前肢下垂。</translation>
    </message>
    <message>
        <source>Neck, maximum dorsiflexion</source>
        <translation>颈部最大背屈</translation>
    </message>
    <message>
        <source>Neck, maximum ventriflexion</source>
        <translation>颈部最大腹屈</translation>
    </message>
    <message>
        <source>Neck, maximum left lateral flexion</source>
        <translation>颈部最大左侧屈</translation>
    </message>
    <message>
        <source>Neck, maximum right lateral flexion</source>
        <translation>颈部最大右侧屈</translation>
    </message>
    <message>
        <source>Neck, maximum axial rotation (left side up)</source>
        <translation>颈部最大轴向旋转（左侧抬起）</translation>
    </message>
    <message>
        <source>Neck, maximum axial rotation (right side up)</source>
        <translation>颈部最大轴向旋转（右侧抬起）</translation>
    </message>
    <message>
        <source>Tail, maximum dorsiflexion</source>
        <translation>尾部最大背屈</translation>
    </message>
    <message>
        <source>Tail, maximum ventriflexion</source>
        <translation>尾部最大腹屈</translation>
    </message>
    <message>
        <source>Tail, maximum left lateral flexion</source>
        <translation>尾部最大左侧屈</translation>
    </message>
    <message>
        <source>Tail, maximum right lateral flexion</source>
        <translation>尾部最大右侧屈</translation>
    </message>
    <message>
        <source>Tail, maximum axial rotation (left side up)</source>
        <translation>尾部最大轴向旋转（左侧抬起）</translation>
    </message>
    <message>
        <source>Tail, maximum axial rotation (right side up)</source>
        <translation>尾部最大轴向旋转（右侧抬起）</translation>
    </message>
    <message>
        <source>snout at %1, %2; sum of joint angles %3 (joints: %4)</source>
        <translation>吻端高 %1，%2；关节角之和 %3（关节数：%4）</translation>
    </message>
    <message>
        <source>tip at %1, %2; sum of joint angles %3 (joints: %4)</source>
        <translation>尾端高 %1，%2；关节角之和 %3（关节数：%4）</translation>
    </message>
    <message>
        <source>%1; not assessed: %2</source>
        <translation>%1；未评估：%2</translation>
    </message>
    <message>
        <source>%1; part of it would be %2 in the ground</source>
        <translation>%1；有一部分会没入地面 %2</translation>
    </message>
    <message>
        <source>Ahead of the neck’s base there are %1 (%2 to %3) of head and neck: hulls of the bones at %4 kg/m³ for the head and %5 for the neck.</source>
        <translation>颈根之前的头与颈共 %1（%2 至 %3）：骨骼凸包，头按 %4 kg/m³、颈按 %5 计。</translation>
    </message>
    <message>
        <source>%1, neck at %2: on the whole the weight pulls the joints apart, and there is no evenness to tell.</source>
        <translation>%1，颈部 %2：总体上重量把关节拉开，无均匀程度可言。</translation>
    </message>
    <message>
        <source>%1, neck at %2: stress %3 on average, coefficient of variation %4 (%5 to %6); largest at %7, %8 times the average.</source>
        <translation>%1，颈部 %2：应力平均 %3，变异系数 %4（%5 至 %6）；最大处为 %7，是平均值的 %8 倍。</translation>
    </message>
    <message>
        <source>Present pose, joint by joint from the neck’s base: %1.</source>
        <translation>当前姿态，自颈根起逐个关节：%1。</translation>
    </message>
    <message>
        <source>Of these postures the stress is most even in this one: %1 (coefficient of variation %2).</source>
        <translation>这些姿态中应力最均匀的是：%1（变异系数 %2）。</translation>
    </message>
    <message>
        <source>Of these postures the stress is most even in this one: %1 (coefficient of variation %2); the error of the masses does not tell it apart from: %3.</source>
        <translation>这些姿态中应力最均匀的是：%1（变异系数 %2）；以质量的误差，无法与以下姿态区分：%3。</translation>
    </message>
    <message>
        <source>With every joint bent by the same share of its range it is most even in neutral, the neck at %1 (coefficient of variation %2).</source>
        <translation>若每个关节都弯曲其活动范围的相同份额，则在中性位时最均匀，颈部 %1（变异系数 %2）。</translation>
    </message>
    <message>
        <source>With every joint bent by the same share of its range it is most even at %1 of maximum dorsiflexion, the neck at %2 (coefficient of variation %3).</source>
        <translation>若每个关节都弯曲其活动范围的相同份额，则在最大背屈的 %1 时最均匀，颈部 %2（变异系数 %3）。</translation>
    </message>
    <message>
        <source>With every joint bent by the same share of its range it is most even at %1 of maximum ventriflexion, the neck at %2 (coefficient of variation %3).</source>
        <translation>若每个关节都弯曲其活动范围的相同份额，则在最大腹屈的 %1 时最均匀，颈部 %2（变异系数 %3）。</translation>
    </message>
    <message>
        <source>The error of the masses does not tell this apart from some postures with the neck anywhere from %1 to %2.</source>
        <translation>以质量的误差，无法将其与颈部从 %1 到 %2 的某些姿态区分。</translation>
    </message>
    <message>
        <source>In the present pose up to %1 act sideways or twist the neck, at %2; they are left out.</source>
        <translation>当前姿态中最多有 %1 向侧面作用或扭转颈部，在 %2；未计入。</translation>
    </message>
    <message>
        <source>Centrum and neural spines are measured at %1 of %2 joints and inferred at the others.</source>
        <translation>%2 个关节中有 %1 个的椎体与神经棘为实测，其余为推断。</translation>
    </message>
    <message>
        <source>One view: a joint is as strong as its usual load asks, so that the posture in which the stress is about even along the neck is the habitual one (Christian &amp; Heinrich 1998, Mitt. Mus. Naturkd. Berl. Geowiss. Reihe 1:73; Christian 2002, same series 5:271; Christian &amp; Dzemski 2007, Fossil Record 10:38). The force is the moment of head and neck over its lever plus the weight along the neck’s axis, the stress that force over the area of the centrum (formula from memory).</source>
        <translation>一种观点：关节的强度恰如其惯常载荷所需，因此沿颈部应力大致均匀的姿态就是习惯姿态（Christian &amp; Heinrich 1998, Mitt. Mus. Naturkd. Berl. Geowiss. Reihe 1:73; Christian 2002，同一刊物 5:271; Christian &amp; Dzemski 2007, Fossil Record 10:38）。力等于头与颈的力矩除以力臂，再加上重量沿颈部轴线的分量；应力等于该力除以椎体面积（公式凭记忆）。</translation>
    </message>
    <message>
        <source>The other view: nothing shows that animals prefer an even stress; one member stands for all muscles and ligaments, whose cross-sections are not known; what moving, feeding and every short posture ask of a joint is left out, and so is what zygapophyses and cartilage carry (common criticism, no source).</source>
        <translation>另一种观点：没有证据表明动物偏好均匀的应力；一根受拉构件代表了全部肌肉与韧带，而它们的横截面未知；运动、取食及各种短暂姿态对关节的要求未计入，关节突与软骨所承担的也未计入（常见批评，无出处）。</translation>
    </message>
    <message>
        <source>Stress is an estimate: masses are off by a fifth or more, and hulls of bones hold little of a neck’s flesh, so that forces are sooner too small than too large. How even it is does not depend on the total mass, only on how it is shared; the range given takes head and neck a fifth off against each other. The tension is taken to run along the neural spines, where a ligament is inferred (Tsuihiji 2004, J. Vert. Paleontol. 24:165), and under the centra where the neck leans back (program default, no source).</source>
        <translation>应力是估计值：质量可能偏差五分之一或更多，而骨骼凸包几乎不含颈部的软组织，因此所得的力多半偏小而非偏大。均匀程度与总质量无关，只取决于质量的分配；所给范围取头与颈各反向偏差五分之一。假定拉力沿神经棘走行，那里推断有一条韧带（Tsuihiji 2004, J. Vert. Paleontol. 24:165）；颈部后仰时则在椎体之下（程序默认值，无出处）。</translation>
    </message>
    <message>
        <source>head height</source>
        <translation>头高</translation>
    </message>
    <message>
        <source>neck inclination</source>
        <translation>颈部倾角</translation>
    </message>
    <message>
        <source>neck base inclination</source>
        <translation>颈根倾角</translation>
    </message>
    <message>
        <source>snout to ground</source>
        <translation>吻端触地</translation>
    </message>
    <message>
        <source>head ahead</source>
        <translation>头部前伸</translation>
    </message>
    <message>
        <source>tail base level</source>
        <translation>尾基部水平</translation>
    </message>
    <message>
        <source>the value of a claim on %1 must be from %2 to %3</source>
        <translation>关于%1的论断，其数值必须在 %2 到 %3 之间</translation>
    </message>
    <message>
        <source>the distance ahead must be from %1 to %2</source>
        <translation>向前的距离必须在 %1 到 %2 之间</translation>
    </message>
    <message>
        <source>a claim on %1 cannot be an "at most"</source>
        <translation>关于%1的论断不能是“至多”</translation>
    </message>
    <message>
        <source>the specimen has no skull</source>
        <translation>标本没有头骨</translation>
    </message>
    <message>
        <source>the specimen has no neck</source>
        <translation>标本没有颈部</translation>
    </message>
    <message>
        <source>the specimen has no five caudals</source>
        <translation>标本没有五节尾椎</translation>
    </message>
    <message>
        <source>the specimen has no forefeet</source>
        <translation>标本没有前足</translation>
    </message>
    <message>
        <source>%1 lacks what the chosen definition of horizontal asks for</source>
        <translation>%1 缺少所选水平定义所需的内容</translation>
    </message>
    <message>
        <source>left hind foot</source>
        <translation>左后足</translation>
    </message>
    <message>
        <source>left fore foot</source>
        <translation>左前足</translation>
    </message>
    <message>
        <source>right hind foot</source>
        <translation>右后足</translation>
    </message>
    <message>
        <source>right fore foot</source>
        <translation>右前足</translation>
    </message>
    <message>
        <source>The forelimbs stand apart and bend, because the neck alone is too short or too stiff.</source>
        <translation>前肢分开并弯曲，因为仅靠颈部太短或太僵硬。</translation>
    </message>
    <message>
        <source>The snout stays %1 over the ground with every neck joint as far down as its range goes.</source>
        <translation>颈部每个关节都降到其活动范围的尽头时，吻端仍离地 %1。</translation>
    </message>
    <message>
        <source>The %1 misses its place by %2.</source>
        <translation>%1偏离其位置 %2。</translation>
    </message>
    <message>
        <source>The %1 is held up and does not carry.</source>
        <translation>%1被抬起，不承重。</translation>
    </message>
    <message>
        <source>The tail's range leaves it %1 over the ground.</source>
        <translation>尾部的活动范围使其仍离地 %1。</translation>
    </message>
    <message>
        <source>The tail's range leaves it %1 under the ground.</source>
        <translation>尾部的活动范围使其没入地面 %1。</translation>
    </message>
    <message>
        <source>The estimated centre of mass lies %1 outside what hind feet and tail stand on: it would fall.</source>
        <translation>估算的质心在后足与尾部支撑面之外 %1：它会倒下。</translation>
    </message>
    <message>
        <source>There are no two hind feet to rear on.</source>
        <translation>没有可供直立的两只后足。</translation>
    </message>
    <message>
        <source>the two have different joints: %1 in the first, %2 in the second</source>
        <translation>两者的关节不同：前者有 %1，后者有 %2</translation>
    </message>
    <message>
        <source>the two have different joints: only one of them has %1</source>
        <translation>两者的关节不同：只有其中一个有 %1</translation>
    </message>
    <message>
        <source>The prints after %1 can't be laid: its pace is unknown.</source>
        <translation>%1 之后的足迹无法排布：其单步长未知。</translation>
    </message>
    <message>
        <source>The prints after %1 can't be laid: its next pace and stride, or its gauge, are unknown.</source>
        <translation>%1 之后的足迹无法排布：其下一单步长与复步长，或其轨距，未知。</translation>
    </message>
    <message>
        <source>The prints after %1 can't be laid: the stride before it, or its gauge, is unknown.</source>
        <translation>%1 之后的足迹无法排布：其前的复步长，或其轨距，未知。</translation>
    </message>
    <message>
        <source>A print without a name can't be laid: its side is unknown.</source>
        <translation>没有名称的足迹无法排布：不知其左右。</translation>
    </message>
    <message>
        <source>'%1' can't be laid: its side is unknown.</source>
        <translation>“%1”无法排布：不知其左右。</translation>
    </message>
    <message>
        <source>The fore prints can't be laid: no row says how far they lie ahead of the hind prints.</source>
        <translation>前足迹无法排布：没有一行说明它们超前后足迹多远。</translation>
    </message>
    <message>
        <source>By volume at most %1, by circumference at least %2: the two do not overlap. Hulls that lack flesh, densities that are too low, or circumferences that are inferred or of stout legs may be why.</source>
        <translation>按体积至多 %1，按周长至少 %2：两者不重叠。原因可能是凸包缺少软组织、密度过低，或周长为推断值或来自粗壮的腿。</translation>
    </message>
    <message>
        <source>By volume at least %1, by circumference at most %2: the two do not overlap. Hulls that hold too much, densities that are too high, or circumferences that are inferred or of slender legs may be why.</source>
        <translation>按体积至少 %1，按周长至多 %2：两者不重叠。原因可能是凸包过大、密度过高，或周长为推断值或来自细长的腿。</translation>
    </message>
    <message>
        <source>circumferences must be above zero: humerus %1, femur %2</source>
        <translation>周长必须大于零：肱骨 %1，股骨 %2</translation>
    </message>
    <message>
        <source>Alexander 1976, Nature 261:129</source>
        <translation>Alexander 1976，Nature 261:129</translation>
    </message>
    <message>
        <source>derived titanosaurs, González Riga 2011, An. Acad. Bras. Ciênc. 83:279</source>
        <translation>进步的泰坦巨龙类，González Riga 2011，An. Acad. Bras. Ciênc. 83:279</translation>
    </message>
    <message>
        <source>own choice</source>
        <translation>自选</translation>
    </message>
    <message>
        <source>Campione &amp; Evans 2012, BMC Biol. 10:60</source>
        <translation>Campione &amp; Evans 2012，BMC Biol. 10:60</translation>
    </message>
    <message>
        <source>Stevens 2013, PLoS ONE 8(10):e78572</source>
        <translation>Stevens 2013, PLoS ONE 8(10):e78572</translation>
    </message>
    <message>
        <source>Taylor, Wedel &amp; Naish 2009, Acta Palaeontol. Pol. 54:213</source>
        <translation>Taylor, Wedel &amp; Naish 2009, Acta Palaeontol. Pol. 54:213</translation>
    </message>
    <message>
        <source>factor 1.21: Sellers et al. 2012, Biol. Lett. 8:842; error 20 %: Brassey &amp; Sellers 2014, PLoS ONE 9(3):e91691</source>
        <translation>系数 1.21：Sellers 等 2012，Biol. Lett. 8:842；误差 20 %：Brassey &amp; Sellers 2014，PLoS ONE 9(3):e91691</translation>
    </message>
    <message>
        <source>The specimen has no neck that moves.</source>
        <translation>标本没有可活动的颈部。</translation>
    </message>
    <message>
        <source>The specimen has no skull whose snout could reach anything.</source>
        <translation>标本没有头骨，谈不上吻端可及。</translation>
    </message>
    <message>
        <source>The specimen has no skull to carry blood to.</source>
        <translation>标本没有头骨，无处供血。</translation>
    </message>
    <message>
        <source>The specimen has no dorsal vertebrae to place a heart under.</source>
        <translation>标本没有背椎，无法在其下安放心脏。</translation>
    </message>
    <message>
        <source>Nothing is known of the size of the centrum or the neural spines at %1.</source>
        <translation>%1 处椎体或神经棘的大小未知。</translation>
    </message>
    <message>
        <source>There are no measurements that could vary.</source>
        <translation>没有可变动的测量值。</translation>
    </message>
    <message>
        <source>Something unforeseen went wrong: %1</source>
        <translation>发生意外错误：%1</translation>
    </message>
    <message>
        <source>%1: neck rising by %2, its base at %3.</source>
        <translation>%1：颈上扬 %2，颈基部 %3。</translation>
    </message>
    <message>
        <source>%1: neck falling by %2, its base at %3.</source>
        <translation>%1：颈下垂 %2，颈基部 %3。</translation>
    </message>
    <message>
        <source>%1: snout %2 over the ground, neck rising by %3, its base at %4.</source>
        <translation>%1：吻端离地 %2，颈部上升 %3，颈基为 %4。</translation>
    </message>
    <message>
        <source>%1: snout %2 over the ground, neck falling by %3, its base at %4.</source>
        <translation>%1：吻端离地 %2，颈部下降 %3，颈基为 %4。</translation>
    </message>
    <message>
        <source>It would be %1 in the ground.</source>
        <translation>它会陷入地面 %1。</translation>
    </message>
    <message>
        <source>It reaches the ground from %1 to %2 ahead of the foremost fore foot.</source>
        <translation>吻端可触及最前的前足前方 %1 至 %2 的地面。</translation>
    </message>
    <message>
        <source>It reaches the ground from %1 to %2 ahead of the neck's base.</source>
        <translation>吻端可触及颈基前方 %1 至 %2 的地面。</translation>
    </message>
    <message>
        <source>With lateral flexion and axial rotation it reaches at least %1 of space over the ground.</source>
        <translation>加上侧屈和轴向旋转，它至少可及地面以上 %1 的空间。</translation>
    </message>
    <message>
        <source>With lateral flexion and axial rotation it reaches at least %1 of space over the ground and %2 of ground.</source>
        <translation>加上侧屈和轴向旋转，它至少可及地面以上 %1 的空间和 %2 的地面。</translation>
    </message>
    <message>
        <source>%1: dorsiflexion %2, ventriflexion %3, left lateral flexion %4, right lateral flexion %5 in all, one motion at a time.</source>
        <translation>%1：合计背屈 %2、腹屈 %3、左侧屈 %4、右侧屈 %5，每次只做一种运动。</translation>
    </message>
    <message>
        <source>%1: %2, between %3 and %4 in nine samples of ten; the table as it is gives %5.</source>
        <translation>%1：%2，十次抽样中有九次在 %3 与 %4 之间；表格原值给出 %5。</translation>
    </message>
    <message numerus="yes">
        <source>%n joints are not assessed and were held in neutral.</source>
        <translation>
            <numerusform>%n 个关节未评估，保持在中性位。</numerusform>
        </translation>
    </message>
    <message>
        <source>Head height and neck slope</source>
        <translation>头高与颈部坡度</translation>
    </message>
    <message>
        <source>Feeding envelope (snout reach)</source>
        <translation>取食范围（吻端可及）</translation>
    </message>
    <message>
        <source>Ranges of the column</source>
        <translation>脊柱的活动范围</translation>
    </message>
    <message>
        <source>Uncertainty (Monte Carlo)</source>
        <translation>不确定性（蒙特卡罗）</translation>
    </message>
    <message>
        <source>Blood pressure</source>
        <translation>血压</translation>
    </message>
    <message>
        <source>Joint stress along the neck</source>
        <translation>沿颈部的关节应力</translation>
    </message>
    <message>
        <source>How high the head comes with the neck neutral, at the ends of its range and now.</source>
        <translation>颈部处于中性、范围两端以及当前时，头部有多高。</translation>
    </message>
    <message>
        <source>Where the snout gets to with every joint inside its range, the animal as it stands.</source>
        <translation>每个关节都在范围之内、动物按现状站立时，吻端可到之处。</translation>
    </message>
    <message>
        <source>How far each joint goes from neutral, one motion at a time.</source>
        <translation>每个关节从中性起可动多少，一次一种运动。</translation>
    </message>
    <message>
        <source>How far heights and slopes move with errors of measurement and with assumptions.</source>
        <translation>高度与坡度随测量误差和假设变动多少。</translation>
    </message>
    <message>
        <source>The column of blood between heart and head, and what the heart has to give.</source>
        <translation>心脏与头部之间的血柱，以及心脏须提供的压力。</translation>
    </message>
    <message>
        <source>How hard each joint of the neck is pressed, and how even that is, in one posture and another.</source>
        <translation>颈部每个关节在不同姿态中受压多大，以及是否均匀。</translation>
    </message>
    <message>
        <source>maximum dorsiflexion</source>
        <translation>最大背屈</translation>
    </message>
    <message>
        <source>maximum ventriflexion</source>
        <translation>最大腹屈</translation>
    </message>
    <message>
        <source>neutral snout height</source>
        <translation>中性位吻端高度</translation>
    </message>
    <message>
        <source>highest snout height</source>
        <translation>吻端最高高度</translation>
    </message>
    <message>
        <source>lowest snout height</source>
        <translation>吻端最低高度</translation>
    </message>
    <message>
        <source>present snout height</source>
        <translation>当前吻端高度</translation>
    </message>
    <message>
        <source>neutral neck slope</source>
        <translation>中性位颈部坡度</translation>
    </message>
    <message>
        <source>neck slope with the snout highest</source>
        <translation>吻端最高时的颈部坡度</translation>
    </message>
    <message>
        <source>present neck slope</source>
        <translation>当前颈部坡度</translation>
    </message>
    <message>
        <source>neck length</source>
        <translation>颈长</translation>
    </message>
    <message>
        <source>Bending up and down only, the snout reaches %1 high and %2 ahead of the neck's base.</source>
        <translation>仅作背腹屈时，吻端可达 %1 高、颈基前方 %2。</translation>
    </message>
    <message>
        <source>It does not reach the ground; its lowest place is %1 over it.</source>
        <translation>吻端触不到地面；最低处离地 %1。</translation>
    </message>
    <message>
        <source>Neck and head</source>
        <translation>颈与头</translation>
    </message>
    <message>
        <source>No animal could be built from any of the samples.</source>
        <translation>没有一次抽样能建成动物。</translation>
    </message>
    <message>
        <source>The neck's present angles are within range in %1 of %2 samples (seed %3).</source>
        <translation>在 %2 次抽样的 %1 中，颈部当前角度在范围内（种子 %3）。</translation>
    </message>
    <message>
        <source>The heart is taken to lie %1 over the ground, in the lower part of the chest.</source>
        <translation>假定心脏离地 %1，位于胸腔下部。</translation>
    </message>
    <message>
        <source>%1: head %2 over the heart, column %3 (%4 to %5), at the heart %6.</source>
        <translation>%1：头高于心脏 %2，血柱 %3（%4 至 %5），心脏处 %6。</translation>
    </message>
    <message>
        <source>At the heart %1 are added to the column for the perfusion of the head, as in giraffes (Aalkjær &amp; Wang 2021, Annu. Rev. Physiol. 83:1); what a sauropod needed is not known.</source>
        <translation>心脏处另加 %1 用于头部灌注，与长颈鹿相同（Aalkjær &amp; Wang 2021, Annu. Rev. Physiol. 83:1）；蜥脚类所需未知。</translation>
    </message>
    <message>
        <source>Bones that collide end ranges too, but for the shafts of cervical ribs, which bend.</source>
        <translation>骨骼相撞也终止活动范围，但可弯曲的颈肋骨干除外。</translation>
    </message>
    <message>
        <source>Collisions between bones are left out of account.</source>
        <translation>骨骼相撞未计入。</translation>
    </message>
    <message>
        <source>One view: the heart has to lift the whole column, on top of what the head itself needs; about 700 mmHg at the heart of an upright sauropod, a siphon not being feasible (Seymour &amp; Lillywhite 2000, Proc. R. Soc. B 267:1883; for giraffes Mitchell et al. 2006, J. Exp. Biol. 209:2515).</source>
        <translation>一种观点：心脏除满足头部所需外，还须托起整段血柱；直立的蜥脚类心脏处约 700 mmHg，虹吸不可行（Seymour &amp; Lillywhite 2000, Proc. R. Soc. B 267:1883；关于长颈鹿见 Mitchell et al. 2006, J. Exp. Biol. 209:2515）。</translation>
    </message>
    <message>
        <source>The other view: gravity acts on the blood going down as on the blood going up, as in a siphon, so that the heart has to overcome friction alone (Hicks &amp; Badeer 1989, Am. J. Physiol. 256:R567, and 1992, 262:R725; for sauropods Hughes et al. 2016, J. Exp. Biol. 219:1154).</source>
        <translation>另一种观点：重力对下行与上行的血液作用相同，如同虹吸，心脏只须克服摩擦（Hicks &amp; Badeer 1989, Am. J. Physiol. 256:R567，以及 1992, 262:R725；关于蜥脚类见 Hughes et al. 2016, J. Exp. Biol. 219:1154）。</translation>
    </message>
    <message>
        <source>Bones tell heights, not pressures: the heart's place is assumed, and which view holds is not settled.</source>
        <translation>骨骼只说明高度，不说明压力：心脏的位置是假定的，何种观点成立尚无定论。</translation>
    </message>
    <message>
        <source>the table is empty</source>
        <translation>表格是空的</translation>
    </message>
    <message>
        <source>'%1' is no body plan</source>
        <translation>“%1”不是体型方案</translation>
    </message>
    <message>
        <source>'%1' is no number of %2</source>
        <translation>“%1”不能是%2的数目</translation>
    </message>
    <message>
        <source>there is no column '%1'</source>
        <translation>没有名为“%1”的列</translation>
    </message>
    <message>
        <source>a second column '%1'</source>
        <translation>“%1”列重复</translation>
    </message>
    <message>
        <source>'%1' does not say whether the condyle is counted</source>
        <translation>“%1”没有说明是否计入关节髁</translation>
    </message>
    <message>
        <source>'%1' is no measure this program knows</source>
        <translation>“%1”不是本程序认识的量度</translation>
    </message>
    <message>
        <source>'%1' has no unit</source>
        <translation>“%1”没有单位</translation>
    </message>
    <message>
        <source>'%1' is no unit for %2</source>
        <translation>“%1”不是%2的单位</translation>
    </message>
    <message>
        <source>%1 cells under %2 titles</source>
        <translation>%2 个标题下有 %1 个单元格</translation>
    </message>
    <message>
        <source>a row without a bone</source>
        <translation>有一行没有骨骼</translation>
    </message>
    <message>
        <source>'%1' is no bone</source>
        <translation>“%1”不是骨骼</translation>
    </message>
    <message>
        <source>%1 stands in line %2 already</source>
        <translation>%1 已在第 %2 行出现</translation>
    </message>
    <message>
        <source>'%1' is no kind of evidence</source>
        <translation>“%1”不是证据类别</translation>
    </message>
    <message>
        <source>'%1' is not a number</source>
        <translation>“%1”不是数字</translation>
    </message>
    <message>
        <source>%1 %2 is not a length</source>
        <translation>%1 %2 不是长度</translation>
    </message>
    <message>
        <source>%1 %2 is more than 20 m</source>
        <translation>%1 %2 超过 20 m</translation>
    </message>
    <message>
        <source>%1 degrees is beyond a right angle</source>
        <translation>%1 度超过直角</translation>
    </message>
    <message>
        <source>%1 is shorter with its condyle than without</source>
        <translation>%1 含关节髁的长度反而比不含的短</translation>
    </message>
    <message>
        <source>%1 would be %2 times as long as high</source>
        <translation>%1 的长将是高的 %2 倍</translation>
    </message>
    <message>
        <source>the facet of %1 is 0 wide: nothing could lie on it</source>
        <translation>%1 的关节面宽度为 0：其上无法有任何接触</translation>
    </message>
    <message>
        <source>the facet of %1 would lie level with the centre of rotation</source>
        <translation>%1 的关节面会与转动中心同高</translation>
    </message>
    <message>
        <source>the %2 of %1 is %3, where the bones around it and the body plan suggest %4</source>
        <translation>%1 的%2为 %3，而周围骨骼与体型方案给出 %4</translation>
    </message>
    <message>
        <source>%1 %2 where the body plan has %3: as few of them are measured, the region comes out %4 times as long as in the plan</source>
        <translation>%2 有 %1 节，而体型方案为 %3 节：由于其中测量的很少，该区段的长度为方案的 %4 倍</translation>
    </message>
    <message>
        <source>'%1' is not used for %2</source>
        <translation>%2 不使用“%1”</translation>
    </message>
    <message>
        <source>the row '%1' has no length</source>
        <translation>“%1”行没有长度</translation>
    </message>
    <message>
        <source>a second row '%1'</source>
        <translation>“%1”行重复</translation>
    </message>
    <message>
        <source>%1 is beyond the %2 %3</source>
        <translation>%1 超出了 %2 块%3</translation>
    </message>
    <message>
        <source>an animal with these counts has no %1</source>
        <translation>按这些椎骨数目，没有 %1</translation>
    </message>
    <message>
        <source>%1, %2: %3, where about %4 would be expected from %5</source>
        <translation>%1 的%2：%3，而依%5应约为 %4</translation>
    </message>
    <message>
        <source>the bones beside it</source>
        <translation>相邻骨骼</translation>
    </message>
    <message>
        <source>the bone of the other side</source>
        <translation>另一侧的骨骼</translation>
    </message>
    <message>
        <source>the other measures of the bone</source>
        <translation>该骨骼的其他量度</translation>
    </message>
    <message>
        <source>the size of the animal</source>
        <translation>动物的大小</translation>
    </message>
    <message>
        <source>%1 is measured and would be gone</source>
        <translation>%1 已有实测，将会消失</translation>
    </message>
    <message>
        <source>%1 has a scan and would be gone</source>
        <translation>%1 有扫描，将会消失</translation>
    </message>
    <message>
        <source>humerus to femur is %1, outside the published %2 to %3</source>
        <translation>肱骨与股骨之比为 %1，超出已发表的 %2 至 %3</translation>
    </message>
    <message>
        <source>tibia to femur is %1, outside the published %2 to %3</source>
        <translation>胫骨与股骨之比为 %1，超出已发表的 %2 至 %3</translation>
    </message>
    <message>
        <source>write a header line such as 'bone,length (mm)' and one row a bone</source>
        <translation>请写一行标题，例如“bone,length (mm)”，每块骨一行</translation>
    </message>
    <message>
        <source>write 'high browser' or 'low browser'</source>
        <translation>请写“high browser”或“low browser”</translation>
    </message>
    <message>
        <source>write a whole number from %1 to %2</source>
        <translation>请写 %1 到 %2 之间的整数</translation>
    </message>
    <message>
        <source>name the column that holds C1, D1, femur.L ... 'bone'</source>
        <translation>请把含 C1、D1、femur.L……的列命名为“bone”</translation>
    </message>
    <message>
        <source>keep one of the two</source>
        <translation>请只留其中之一</translation>
    </message>
    <message>
        <source>it is taken as without; write 'length' (without) or 'length with condyle'</source>
        <translation>按不含处理；请写“length”（不含）或“length with condyle”（含）</translation>
    </message>
    <message>
        <source>use a title of the list in the README, or name the column 'remark'</source>
        <translation>请用 README 列出的标题，或把该列命名为“remark”</translation>
    </message>
    <message>
        <source>write '%1 (mm), (cm) or (m)'</source>
        <translation>请写“%1 (mm)、(cm) 或 (m)”</translation>
    </message>
    <message>
        <source>write '%1 (deg)'</source>
        <translation>请写“%1 (deg)”</translation>
    </message>
    <message>
        <source>remove the surplus cells, or write numbers with a decimal point</source>
        <translation>请删去多余的单元格，或用小数点写数字</translation>
    </message>
    <message>
        <source>write an id such as C7, D3, Ca12, rib.D4.L, humerus.R or metacarpal3.L</source>
        <translation>请写编号，例如 C7、D3、Ca12、rib.D4.L、humerus.R 或 metacarpal3.L</translation>
    </message>
    <message>
        <source>keep one of the two rows</source>
        <translation>请只留两行之一</translation>
    </message>
    <message>
        <source>write found, 'found, deformed', mirrored, 'scaled from another' or inferred</source>
        <translation>请写 found、“found, deformed”、mirrored、“scaled from another”或 inferred</translation>
    </message>
    <message>
        <source>write a number in %1, or leave the cell blank when it is not known</source>
        <translation>请写以 %1 为单位的数字，未知时留空</translation>
    </message>
    <message>
        <source>write a length above zero, or leave the cell blank when it is not known</source>
        <translation>请写大于零的长度，未知时留空</translation>
    </message>
    <message>
        <source>check the unit in the header</source>
        <translation>请检查标题中的单位</translation>
    </message>
    <message>
        <source>check the angle</source>
        <translation>请检查角度</translation>
    </message>
    <message>
        <source>swap the two lengths, or check their columns</source>
        <translation>请对调两个长度，或检查它们所在的列</translation>
    </message>
    <message>
        <source>write a width above zero, leave the cell blank, or write 'facet length' 0 where the bone has no facet</source>
        <translation>请写大于零的宽度，或将单元格留空；骨骼没有关节面时在“facet length”写 0</translation>
    </message>
    <message>
        <source>write a height above zero, leave the cell blank, or write 'facet length' 0 where the bone has no facet</source>
        <translation>请写大于零的高度，或将单元格留空；骨骼没有关节面时在“facet length”写 0</translation>
    </message>
    <message>
        <source>check it; it counts for this bone and the facets that meet it, and is not carried along the column</source>
        <translation>请核对；该值只用于此骨骼及与之相接的关节面，不沿脊柱传递</translation>
    </message>
    <message>
        <source>write its measured total in a row 'neck', 'trunk', 'sacrum' or 'tail', or the lengths of more of its vertebrae</source>
        <translation>请在“neck”、“trunk”、“sacrum”或“tail”一行写测得的总长，或写更多椎骨的长度</translation>
    </message>
    <message>
        <source>check length and cotyle height for a slip of the decimal point</source>
        <translation>请检查长度和关节窝高的小数点是否错位</translation>
    </message>
    <message>
        <source>the value is ignored</source>
        <translation>该值不予采用</translation>
    </message>
    <message>
        <source>write the region's total length</source>
        <translation>请写该区段的总长</translation>
    </message>
    <message>
        <source>correct the number of the bone or the line '# %1: N'</source>
        <translation>请改正骨骼的编号或“# %1: N”这一行</translation>
    </message>
    <message>
        <source>correct the id, or the counts in the lines that start with #</source>
        <translation>请更正编号，或更正以 # 开头的行中的数目</translation>
    </message>
    <message>
        <source>check the two lengths</source>
        <translation>请检查这两个长度</translation>
    </message>
    <message>
        <source>%1; it counts for this bone and the facets that meet it, and is not carried along the column</source>
        <translation>%1；它只对该骨骼及与之相接的关节面有效，不沿脊柱推及其他</translation>
    </message>
    <message>
        <source>%1 times too large? Check the decimal point and the unit</source>
        <translation>是否大了 %1 倍？请检查小数点和单位</translation>
    </message>
    <message>
        <source>%1 times too small? Check the decimal point and the unit</source>
        <translation>是否小了 %1 倍？请检查小数点和单位</translation>
    </message>
    <message>
        <source>digits swapped? %1 would fit</source>
        <translation>数字是否对调？%1 则相符</translation>
    </message>
    <message>
        <source>0 says that the bone has no facet; leave the cell blank where that is not meant</source>
        <translation>0 表示该骨骼没有关节面；若非此意，请将单元格留空</translation>
    </message>
    <message>
        <source>clear its row first</source>
        <translation>请先清空它的行</translation>
    </message>
    <message>
        <source>remove the scan first</source>
        <translation>请先移除扫描</translation>
    </message>
    <message>
        <source>check it; it is used as it stands</source>
        <translation>请检查；它按原样使用</translation>
    </message>
    <message>
        <source>there is no header</source>
        <translation>没有标题行</translation>
    </message>
    <message>
        <source>there is no bone '%1'</source>
        <translation>没有骨骼“%1”</translation>
    </message>
    <message>
        <source>the landmark has no name</source>
        <translation>标志点没有名称</translation>
    </message>
    <message>
        <source>'%1' is more than a kilometre away</source>
        <translation>“%1”远在一公里之外</translation>
    </message>
    <message>
        <source>%1 has '%2' twice</source>
        <translation>%1 的“%2”出现两次</translation>
    </message>
    <message>
        <source>write bone,landmark,x (mm),y (mm),z (mm) in the first line</source>
        <translation>请在第一行写 bone,landmark,x (mm),y (mm),z (mm)</translation>
    </message>
    <message>
        <source>write an id such as C5 or femur.L</source>
        <translation>请写编号，例如 C5 或 femur.L</translation>
    </message>
    <message>
        <source>write one, such as cranialRim</source>
        <translation>请写一个，例如 cranialRim</translation>
    </message>
    <message>
        <source>write a coordinate</source>
        <translation>请写坐标</translation>
    </message>
    <message>
        <source>check the unit</source>
        <translation>请检查单位</translation>
    </message>
    <message>
        <source>leave one of them out</source>
        <translation>请去掉其中之一</translation>
    </message>
    <message>
        <source>'%1' is no facet</source>
        <translation>“%1”不是关节面</translation>
    </message>
    <message>
        <source>the three numbers under '%1' give no direction</source>
        <translation>“%1”下的三个数没有给出方向</translation>
    </message>
    <message>
        <source>the direction of sliding stands on the facet instead of lying in it</source>
        <translation>滑动方向垂直于关节面，而不在其中</translation>
    </message>
    <message>
        <source>'%1' is not between 0 and 1</source>
        <translation>“%1”不在 0 与 1 之间</translation>
    </message>
    <message>
        <source>'%1' is no corner of an outline</source>
        <translation>“%1”不是轮廓的角点</translation>
    </message>
    <message>
        <source>the outline is not convex, or encloses nothing</source>
        <translation>轮廓不是凸的，或没有围成任何面积</translation>
    </message>
    <message>
        <source>write bone, facet, centre x (mm), centre y (mm), centre z (mm), normal x, normal y, normal z, length (mm), width (mm) in the first line</source>
        <translation>请在第一行写 bone, facet, centre x (mm), centre y (mm), centre z (mm), normal x, normal y, normal z, length (mm), width (mm)</translation>
    </message>
    <message>
        <source>write prezyg.L, prezyg.R, postzyg.L or postzyg.R</source>
        <translation>请写 prezyg.L、prezyg.R、postzyg.L 或 postzyg.R</translation>
    </message>
    <message>
        <source>write three numbers that are not all 0, such as 0, 0, 1</source>
        <translation>请写三个不全为 0 的数，例如 0, 0, 1</translation>
    </message>
    <message>
        <source>write a direction across the normal, or leave the three cells blank</source>
        <translation>请写与法线垂直的方向，或将三个单元格留空</translation>
    </message>
    <message>
        <source>write a number from 0 to 1, or leave the cell blank</source>
        <translation>请写 0 到 1 的数，或将单元格留空</translation>
    </message>
    <message>
        <source>write corners in order with / between them, such as '-8 -5 / 8 -5 / 8 5 / -8 5', or leave the cell blank for an ellipse</source>
        <translation>请依次写各角点，以 / 隔开，例如 '-8 -5 / 8 -5 / 8 5 / -8 5'，或将单元格留空表示椭圆</translation>
    </message>
    <message>
        <source>no footprint stands below the header</source>
        <translation>标题行下没有足迹</translation>
    </message>
    <message>
        <source>there is no column of distances</source>
        <translation>没有距离列</translation>
    </message>
    <message>
        <source>the column '%1' is not used</source>
        <translation>“%1”列未被使用</translation>
    </message>
    <message>
        <source>the row says nothing of a print and is left out</source>
        <translation>该行没有足迹内容，已略去</translation>
    </message>
    <message>
        <source>a print without a foot</source>
        <translation>有足迹未注明是哪只足</translation>
    </message>
    <message>
        <source>'%1' does not tell left from right</source>
        <translation>“%1”分不出左右</translation>
    </message>
    <message>
        <source>%1 %2 is no distance</source>
        <translation>%1 %2 不是距离</translation>
    </message>
    <message>
        <source>no three prints can lie %1, %2 and %3 apart</source>
        <translation>三个足迹不可能相距 %1、%2 与 %3</translation>
    </message>
    <message>
        <source>%1 and %2 follow each other on the same side</source>
        <translation>%1 与 %2 在同一侧相继出现</translation>
    </message>
    <message>
        <source>the pace %1 differs from the next pace of %2, %3</source>
        <translation>单步长 %1 与 %2 的下一单步长 %3 不同</translation>
    </message>
    <message>
        <source>write one row a print</source>
        <translation>请每个足迹写一行</translation>
    </message>
    <message>
        <source>write a header line 'foot,pace_cm,next_pace_cm,stride_cm,length_cm' and one row a print</source>
        <translation>请写标题行“foot,pace_cm,next_pace_cm,stride_cm,length_cm”，每个足迹一行</translation>
    </message>
    <message>
        <source>write '%1', '%2' or '%3'</source>
        <translation>请写“%1”、“%2”或“%3”</translation>
    </message>
    <message>
        <source>nothing need be done</source>
        <translation>无需处理</translation>
    </message>
    <message>
        <source>write a name such as LP1 or 'right fore' if the prints are to lie on the ground</source>
        <translation>若要把足迹排在地面上，请写 LP1 或“right fore”之类的名称</translation>
    </message>
    <message>
        <source>check the paces and the stride; the longest must be less than the other two together</source>
        <translation>请检查步距与复步长；最长的必须小于另两者之和</translation>
    </message>
    <message>
        <source>check whether a print between them is missing; the distances of %1 reach over it</source>
        <translation>请检查两者之间是否缺了足迹；%1 的距离跨过了它</translation>
    </message>
    <message>
        <source>check both; each row is calculated with its own</source>
        <translation>请两处都检查；各行按自己的数值计算</translation>
    </message>
    <message>
        <source>%4; %5</source>
        <translation>%4；%5</translation>
    </message>
    <message>
        <source>%1:%2: %4; %5</source>
        <translation>%1:%2：%4；%5</translation>
    </message>
    <message>
        <source>%1:%2, column %3: %4; %5</source>
        <translation>%1:%2，第 %3 列：%4；%5</translation>
    </message>
    <message>
        <source>%1:%2, column %3 (%6): %4; %5</source>
        <translation>%1:%2，第 %3 列（%6）：%4；%5</translation>
    </message>
    <message>
        <source>A measurement table to be filled in. Lengths in mm, angles in degrees; other units may be written in the titles.</source>
        <translation>待填写的测量表。长度以 mm 计，角度以度计；也可在列标题中写其他单位。</translation>
    </message>
    <message>
        <source>What is not known stays blank, and rows and columns that are not needed may be taken out; the program infers the rest and says by which rule.</source>
        <translation>未知的留空，不需要的行和列可以删去；其余由程序推断，并说明依据何种规则。</translation>
    </message>
    <message>
        <source>The length of a vertebra is its functional length, without the condyle; that with it has a column of its own.</source>
        <translation>椎骨的长度为功能长度，不含关节髁；含关节髁的长度另有一列。</translation>
    </message>
    <message>
        <source>Under evidence stands found, 'found, deformed', mirrored, 'scaled from another' or inferred; under source where the value is written.</source>
        <translation>evidence 一列写 found、'found, deformed'、mirrored、'scaled from another' 或 inferred；source 一列写数值的出处。</translation>
    </message>
    <message>
        <source>A measured total of a region may be added as a row neck, trunk, sacrum or tail with a length.</source>
        <translation>区段的实测总长可另加一行 neck、trunk、sacrum 或 tail，并写长度。</translation>
    </message>
    <message>
        <source>unknown option %1; %2 knows %3</source>
        <translation>未知的选项 %1；%2 认识 %3</translation>
    </message>
    <message>
        <source>%1 takes no value</source>
        <translation>%1 不带值</translation>
    </message>
    <message>
        <source>%1 needs a value: %1 %2</source>
        <translation>%1 需要一个值：%1 %2</translation>
    </message>
    <message>
        <source>%1 is missing: %1 %2</source>
        <translation>缺少 %1：%1 %2</translation>
    </message>
    <message>
        <source>the %1 is missing</source>
        <translation>缺少 %1</translation>
    </message>
    <message>
        <source>'%1' is one file too many; %2 takes one %3</source>
        <translation>“%1”多出了一个文件；%2 只取一个 %3</translation>
    </message>
    <message>
        <source>%1: '%2' is not a number; write %3 from %4 to %5</source>
        <translation>%1：“%2”不是数；请写 %3，从 %4 到 %5</translation>
    </message>
    <message>
        <source>%1: %2 is too far; write %3 from %4 to %5</source>
        <translation>%1：%2 超出界限；请写 %3，从 %4 到 %5</translation>
    </message>
    <message>
        <source>%1: '%2' is not among %3</source>
        <translation>%1：“%2”不在 %3 之中</translation>
    </message>
    <message>
        <source>every joint that can be assessed is within range</source>
        <translation>可评估的关节全部在活动范围内</translation>
    </message>
    <message>
        <source>state</source>
        <translation>状态</translation>
    </message>
    <message>
        <source>lateral</source>
        <translation>侧屈</translation>
    </message>
    <message>
        <source>%1: %2 out of range, %3 near limit, %4 within range, %5 not assessed</source>
        <translation>%1：%2 个超出活动范围，%3 个接近极限，%4 个在活动范围内，%5 个未评估</translation>
    </message>
    <message>
        <source>no bones interpenetrate by more than the tolerated %1; %2</source>
        <translation>没有骨骼相互嵌入超过容许的 %1；%2</translation>
    </message>
    <message>
        <source>angles in degrees from neutral, dorsiflexion, left and rising left side positive; left and right: zygapophyseal overlap</source>
        <translation>角度以度计，自中性位起，背屈、向左与左侧抬起为正；左与右：关节面重叠</translation>
    </message>
    <message>
        <source>assesses every joint of a pose by its bones</source>
        <translation>评估一个姿态中的每个关节，以骨骼为准</translation>
    </message>
    <message>
        <source>a named pose instead of the present one</source>
        <translation>用某个命名姿态代替当前姿态</translation>
    </message>
    <message>
        <source>every joint, for machines</source>
        <translation>每个关节，供机器读取</translation>
    </message>
    <message>
        <source>Findings are sorted worst first. Exit 1 when a joint is out of range or bones interpenetrate deeper than is
tolerated; their shapes are sculpted when they are first needed. Assumptions that are given stand for this run only; those of the
project hold for the rest.
</source>
        <translation>判定结果从最差的排起。有关节超出活动范围，或骨骼相互嵌入超过容许深度，则退出码为 1；
骨骼形状在首次需要时生成。给出的假设只对这一次运行有效；其余仍用项目的假设。
</translation>
    </message>
    <message>
        <source>minimum zygapophyseal overlap, a share from 0 to 1; published rule 0.5</source>
        <translation>关节突最小重叠，0 到 1 的份额；已发表的规则为 0.5</translation>
    </message>
    <message>
        <source>what that share is taken of</source>
        <translation>该份额按什么计算</translation>
    </message>
    <message>
        <source>cartilage in neck, trunk and tail, % of the centrum's length</source>
        <translation>颈部、躯干和尾部的软骨，占椎体长度的百分比</translation>
    </message>
    <message>
        <source>how far bones settle when they turn, % of the cartilage's thickness</source>
        <translation>骨骼转动时沉降多少，占软骨厚度的百分比</translation>
    </message>
    <message>
        <source>how deep bones may interpenetrate, % of the smaller bone's mean extent; else 1.3</source>
        <translation>骨骼可相互嵌入多深，占较小骨骼平均尺寸的百分比；否则为 1.3</translation>
    </message>
    <message>
        <source>the same in millimetres, for every bone</source>
        <translation>同上，以毫米计，对所有骨骼相同</translation>
    </message>
    <message>
        <source>a scan is assessed against a neighbour whose facets are inferred</source>
        <translation>扫描可对照关节面为推断的邻骨评估</translation>
    </message>
    <message>
        <source>what the neutral articulation asks for</source>
        <translation>中性关节位所要求的条件</translation>
    </message>
    <message>
        <source>what the slope of a vertebra is measured by</source>
        <translation>椎骨倾角的量取依据</translation>
    </message>
    <message>
        <source>a share</source>
        <translation>份额</translation>
    </message>
    <message>
        <source>percent</source>
        <translation>百分数</translation>
    </message>
    <message>
        <source>--contact-mm: it says the same as --contact-percent; give one of the two</source>
        <translation>--contact-mm：与 --contact-percent 所说相同；请只给其中之一</translation>
    </message>
    <message>
        <source>ranges are of bare bones: they may be off by 5 degrees a joint, and soft tissue may lessen them</source>
        <translation>活动范围只依据裸骨：每个关节可能相差 5 度，软组织还可能使其减小</translation>
    </message>
    <message>
        <source>--span: '%1' does not name two bones of the specimen, such as C2-C13</source>
        <translation>--span：“%1”没有指出标本的两块骨骼，例如 C2-C13</translation>
    </message>
    <message>
        <source>--span: nothing moves between %1</source>
        <translation>--span：%1 之间没有可动的关节</translation>
    </message>
    <message>
        <source>%1 comes before any --joint or --span; name the joint first</source>
        <translation>%1 出现在任何 --joint 或 --span 之前；请先指出关节</translation>
    </message>
    <message>
        <source>degrees</source>
        <translation>度</translation>
    </message>
    <message>
        <source>nothing to bend: add --joint C6-C7 or --span C2-C13 and an angle</source>
        <translation>没有可弯曲的：请加上 --joint C6-C7 或 --span C2-C13 和一个角度</translation>
    </message>
    <message>
        <source>%1 has no angle: add --dorsiflexion, --lateral or --torsion with degrees</source>
        <translation>%1 没有角度：请加上 --dorsiflexion、--lateral 或 --torsion 及度数</translation>
    </message>
    <message>
        <source>warning: %1: no joint of it has a range for %2; the turn is shared evenly</source>
        <translation>警告：%1：其中没有关节具有 %2 的活动范围；转角平均分配</translation>
    </message>
    <message numerus="yes">
        <source>%n joints bent, %1 within range</source>
        <translation>
            <numerusform>已弯曲 %n 个关节，%1 个在活动范围内</numerusform>
        </translation>
    </message>
    <message>
        <source>bent the pose '%1', now also the present pose</source>
        <translation>已弯曲姿态“%1”，它现在也是当前姿态</translation>
    </message>
    <message>
        <source>bent the present pose</source>
        <translation>已弯曲当前姿态</translation>
    </message>
    <message>
        <source>turns joints of a pose and writes the project anew</source>
        <translation>转动一个姿态的关节，并写出新的项目</translation>
    </message>
    <message>
        <source>the joint that the following angles are for; may be repeated</source>
        <translation>其后各角度所属的关节；可重复给出</translation>
    </message>
    <message>
        <source>instead of a joint: all joints between two bones; may be repeated</source>
        <translation>代替单个关节：两块骨骼之间的全部关节；可重复给出</translation>
    </message>
    <message>
        <source>dorsiflexion from neutral; limbs: flexion</source>
        <translation>自中性位的背屈；四肢：屈曲</translation>
    </message>
    <message>
        <source>left lateral flexion; limbs: abduction</source>
        <translation>向左侧屈；四肢：外展</translation>
    </message>
    <message>
        <source>axial rotation, left side up; limbs: rotation</source>
        <translation>轴向旋转，左侧抬起；四肢：旋转</translation>
    </message>
    <message>
        <source>starts from a named pose</source>
        <translation>从某个命名姿态开始</translation>
    </message>
    <message>
        <source>the project to write</source>
        <translation>要写出的项目</translation>
    </message>
    <message>
        <source>--joint sets an angle, and leaves the joint's other angles. --span adds the turn to what is there, shared in
proportion to each joint's range. The result becomes the present pose; with --pose it also replaces the named
one. A pose out of range is written all the same: the verdicts are printed, and assess judges it.
</source>
        <translation>--joint 设定一个角度，该关节的其他角度不变。--span 把转角加在已有的角度上，按各关节的活动范围成比例分配。
结果成为当前姿态；用 --pose 时也取代所指的命名姿态。超出活动范围的姿态照样写出：会打印判定，
并由 assess 评估。
</translation>
    </message>
    <message>
        <source>%1: '%2' is no bone of this animal and no part of it; write ids such as C5 or humerus.L, or parts (%3; .L or .R at their end takes one side), with commas between them</source>
        <translation>%1：“%2”不是这个动物的骨骼，也不是它的部位；请写编号如 C5 或 humerus.L，或部位（%3；末尾加 .L 或 .R 取一侧），以逗号分隔</translation>
    </message>
    <message>
        <source>head at least H metres high</source>
        <translation>头部至少高 H 米</translation>
    </message>
    <message>
        <source>line from the neck's base to its end at least A degrees to the horizontal</source>
        <translation>颈根到颈部末端的连线与水平至少成 A 度</translation>
    </message>
    <message>
        <source>hindmost cervical at least A degrees to the horizontal</source>
        <translation>最后一节颈椎与水平至少成 A 度</translation>
    </message>
    <message>
        <source>snout reaches the ground D metres ahead of the forefeet</source>
        <translation>吻端在前足之前 D 米处触地</translation>
    </message>
    <message>
        <source>head reaches H metres high, D metres ahead of the forefeet</source>
        <translation>头部在前足之前 D 米处达到 H 米高</translation>
    </message>
    <message>
        <source>base of the tail within A degrees of level</source>
        <translation>尾根与水平相差不超过 A 度</translation>
    </message>
    <message>
        <source>%1: '%2' is not a distance and a height in metres with a comma between, such as 2,3.5</source>
        <translation>%1：“%2”不是以逗号隔开的距离与高度（米），例如 2,3.5</translation>
    </message>
    <message>
        <source>metres ahead</source>
        <translation>向前的米数</translation>
    </message>
    <message>
        <source>metres of height</source>
        <translation>高度的米数</translation>
    </message>
    <message>
        <source>metres</source>
        <translation>米</translation>
    </message>
    <message>
        <source>turns a slope of the neck into an upper bound</source>
        <translation>把颈部坡度变为上限</translation>
    </message>
    <message>
        <source>who claims it</source>
        <translation>提出论断者</translation>
    </message>
    <message>
        <source>%1: one claim at a time, or none for those of the project</source>
        <translation>%1：一次只能给一个论断，或不给而用项目中的论断</translation>
    </message>
    <message>
        <source>--at-most goes with --neck-slope-deg or --neck-base-deg</source>
        <translation>--at-most 须与 --neck-slope-deg 或 --neck-base-deg 同用</translation>
    </message>
    <message>
        <source>--source goes with a claim</source>
        <translation>--source 须与一个论断同用</translation>
    </message>
    <message>
        <source>a whole number of samples</source>
        <translation>抽样数的整数</translation>
    </message>
    <message>
        <source>a whole number</source>
        <translation>整数</translation>
    </message>
    <message>
        <source>working out the probability</source>
        <translation>正在计算概率</translation>
    </message>
    <message>
        <source>further joints: %1</source>
        <translation>其他关节：%1</translation>
    </message>
    <message>
        <source>the project holds no claims; name one, such as --head-height-m 8.5 (zygapose help claim)</source>
        <translation>该项目没有论断；请给出一个，例如 --head-height-m 8.5（zygapose help claim）</translation>
    </message>
    <message>
        <source>--out goes with one claim, whose pose is written</source>
        <translation>--out 须与一个论断同用，写出的是该论断的姿态</translation>
    </message>
    <message>
        <source>takes trunk and limbs from a named pose</source>
        <translation>从某个命名姿态取躯干和四肢</translation>
    </message>
    <message>
        <source>writes the project with the pose that shows it, and the claim in its list</source>
        <translation>写出项目，带有显示该论断的姿态，并把论断列入其中</translation>
    </message>
    <message>
        <source>how many samples the probability rests on; else 1000</source>
        <translation>概率所依据的抽样数；未给出时为 1000</translation>
    </message>
    <message>
        <source>of the samples; the same seed gives the same numbers; else 1</source>
        <translation>抽样的种子；同一种子给出相同的数值；未给出时为 1</translation>
    </message>
    <message>
        <source>the answer for machines</source>
        <translation>供机器读取的答案</translation>
    </message>
    <message>
        <source>tells whether a claim is within range, what stops it and what it would take</source>
        <translation>说明一个论断是否在活动范围内、受什么限制以及需要什么条件</translation>
    </message>
    <message>
        <source>Without a claim those of the project are answered. Trunk, limbs and feet stay as posed; neck, head and tail bend
up and down only, each joint inside its range, no bones colliding. Heights are the snout's. The answer has the most
that is within range, the joints that stop it, worst first, the minimum overlap and the cartilage in the neck (or
tail) at which the answer changes with everything else as it is, the degrees by which all ranges may be narrower or
have to be wider, and how many joints are near limit in the pose that shows it. Beside it stand the answer with the
foremost three dorsals bending as well, and what is claimed in the two postures published as habitual.
Its probability is the share of samples in which the claim is within range: they vary measures, shapes of
deformed bones, assumptions and definitions. With --out a claim out of range writes the nearest pose; with --pose it
also replaces the named one.
Exit 1: out of range or not answered, with several claims any of them.
</source>
        <translation>不给出论断时，回答项目中的论断。躯干、四肢和足保持所摆姿态；颈部、头部和尾部只上下弯曲，
每个关节都在活动范围内，且没有骨骼相撞。高度为吻端的高度。答案给出在活动范围内的最大值、
限制它的关节（最差的在前）、其余不变时使答案改变的最小重叠与颈部（或尾部）软骨、
所有活动范围可以变窄或必须变宽的度数，以及在显示它的姿态中有多少关节接近限度。
旁边给出最前三节背椎一同弯曲时的答案，以及在两种发表为习惯姿态的姿势中论断所述的值。
概率是该论断在活动范围内的抽样所占的比例：抽样使测量值、变形骨骼的形状、假设和定义变动。
用 --out 时，超出活动范围的论断写出最接近的姿态；加 --pose 时还替换所指名的姿态。
退出码 1：超出活动范围或未作答；有多个论断时，其中任何一个如此即是。
</translation>
    </message>
    <message>
        <source>difference</source>
        <translation>差</translation>
    </message>
    <message>
        <source>unit</source>
        <translation>单位</translation>
    </message>
    <message>
        <source>deg</source>
        <translation>度</translation>
    </message>
    <message>
        <source>no joint differs</source>
        <translation>没有关节不同</translation>
    </message>
    <message>
        <source>angles in degrees: dorsiflexion, left lateral flexion, axial rotation</source>
        <translation>角度（度）：背屈、左侧屈、轴向旋转</translation>
    </message>
    <message>
        <source>%1: joints out of range %2, near limit %3, within range %4, not assessed %5</source>
        <translation>%1：关节超出活动范围 %2，接近极限 %3，在活动范围内 %4，未评估 %5</translation>
    </message>
    <message>
        <source>two files can be compared, not more</source>
        <translation>最多可以比较两个文件</translation>
    </message>
    <message>
        <source>name two poses (--first NAME --second NAME) or give two files</source>
        <translation>请指出两个姿态（--first NAME --second NAME）或给出两个文件</translation>
    </message>
    <message>
        <source>tells how two poses, or two sets of assumptions, differ</source>
        <translation>说明两个姿态或两组假设有何不同</translation>
    </message>
    <message>
        <source>a named pose, or present, which it is unless said otherwise</source>
        <translation>一个命名姿态，或 present（当前姿态），未另说明时即为后者</translation>
    </message>
    <message>
        <source>the other one, likewise</source>
        <translation>另一个，同上</translation>
    </message>
    <message>
        <source>the differences for machines</source>
        <translation>供机器读取的差别</translation>
    </message>
    <message>
        <source>With two files the animals must have the same joints; each pose is judged under its own file's assumptions, so
two files that differ in nothing else compare two sets of assumptions.
</source>
        <translation>给出两个文件时，两只动物须有相同的关节；每个姿态按各自文件的假设判定，
因此其他方面都相同的两个文件比较的是两组假设。
</translation>
    </message>
    <message>
        <source>--no-contact: it contradicts --contact, which holds by itself; leave one out</source>
        <translation>--no-contact：与 --contact 矛盾，后者本来就有效；请去掉其中之一</translation>
    </message>
    <message>
        <source>bones that collide do not count; nothing has to be sculpted for them</source>
        <translation>骨骼相撞不计入；无须为此塑形</translation>
    </message>
    <message>
        <source>as it is without --no-contact; for older scripts</source>
        <translation>与不写 --no-contact 相同；供旧脚本使用</translation>
    </message>
    <message>
        <source>bones that collide count too; %1</source>
        <translation>骨骼相撞也计入；%1</translation>
    </message>
    <message>
        <source>collisions between bones were not assessed (--no-contact)</source>
        <translation>未评估骨骼相撞（--no-contact）</translation>
    </message>
    <message>
        <source>millimetres</source>
        <translation>毫米</translation>
    </message>
    <message>
        <source>%1 needs --watertight</source>
        <translation>%1 需要 --watertight</translation>
    </message>
    <message>
        <source>%1 long, %2 wide, %3 high</source>
        <translation>长 %1，宽 %2，高 %3</translation>
    </message>
    <message>
        <source>making surfaces</source>
        <translation>正在生成曲面</translation>
    </message>
    <message>
        <source>writes the posed bones as meshes</source>
        <translation>把摆好姿态的骨骼写成网格</translation>
    </message>
    <message>
        <source>its ending sets the format: glb, gltf, obj, ply, stl or dae</source>
        <translation>扩展名决定格式：glb、gltf、obj、ply、stl 或 dae</translation>
    </message>
    <message>
        <source>all bones as one mesh</source>
        <translation>全部骨骼合为一个网格</translation>
    </message>
    <message>
        <source>all bones as one closed surface, to sculpt on</source>
        <translation>全部骨骼成为一个封闭曲面，供雕塑之用</translation>
    </message>
    <message>
        <source>detail of the closed surface; a two-thousandth of the animal unless said otherwise</source>
        <translation>封闭曲面的细节；未另说明时为动物长度的两千分之一</translation>
    </message>
    <message>
        <source>joints of the closed surface are filled where cartilage was</source>
        <translation>封闭曲面的关节在有软骨处填满</translation>
    </message>
    <message>
        <source>also an envelope of the thickness saved in the project: a guide, not anatomy</source>
        <translation>另加一个包络，厚度为项目中所存：只是参考，并非解剖</translation>
    </message>
    <message>
        <source>about so many a bone, 12000 unless said otherwise; with --watertight in all, 300000</source>
        <translation>每块骨骼约有这么多三角形，未另说明时为 12000；用 --watertight 时为总数，300000</translation>
    </message>
    <message>
        <source>metres unless said otherwise; glTF is always in metres</source>
        <translation>未另说明时为米；glTF 总以米计</translation>
    </message>
    <message>
        <source>z unless said otherwise; glTF is always y up</source>
        <translation>未另说明时为 z；glTF 总是 y 轴向上</translation>
    </message>
    <message>
        <source>In glTF and COLLADA nodes are named by bone and nested as the joints are; OBJ has an object a bone; PLY and STL
hold a single mesh; a body guide then goes into a file beside it. Z up: x forward, y left. Y up: z forward, x left.
</source>
        <translation>glTF 和 COLLADA 中，节点以骨骼命名并按关节嵌套；OBJ 中每块骨骼一个对象；PLY 和 STL 只容一个网格；
体形参考则写入旁边的另一个文件。Z 向上：x 向前，y 向左。Y 向上：z 向前，x 向左。
</translation>
    </message>
    <message>
        <source>%1 triangles, %2 vertices, closed</source>
        <translation>%1 个三角形，%2 个顶点，封闭</translation>
    </message>
    <message>
        <source>%1 triangles, %2 vertices, not closed</source>
        <translation>%1 个三角形，%2 个顶点，不封闭</translation>
    </message>
    <message>
        <source>size %1 × %2 × %3, volume %4 l</source>
        <translation>尺寸 %1 × %2 × %3，体积 %4 l</translation>
    </message>
    <message>
        <source>unit guessed %1</source>
        <translation>猜测单位为 %1</translation>
    </message>
    <message>
        <source>unit guessed %1, not sure</source>
        <translation>猜测单位为 %1，不确定</translation>
    </message>
    <message>
        <source>by its name %1</source>
        <translation>按名称为%1</translation>
    </message>
    <message>
        <source>repairs: none</source>
        <translation>修复：无</translation>
    </message>
    <message>
        <source>repairs:</source>
        <translation>修复：</translation>
    </message>
    <message>
        <source>left as found: nothing</source>
        <translation>保持原样：无</translation>
    </message>
    <message>
        <source>left as found:</source>
        <translation>保持原样：</translation>
    </message>
    <message>
        <source>incomplete scan: %1</source>
        <translation>不完整的扫描：%1</translation>
    </message>
    <message>
        <source>tells what a mesh file holds and what cleaning it takes</source>
        <translation>说明一个网格文件的内容以及清理它需要什么</translation>
    </message>
    <message>
        <source>the file's unit; guessed from its size unless said</source>
        <translation>文件的单位；未给出时由大小推测</translation>
    </message>
    <message>
        <source>everything, for machines</source>
        <translation>全部内容，供机器读取</translation>
    </message>
    <message>
        <source>The file is read by a process of its own with limits on time and memory, and is not changed.
--json: also missing (borders, border_length_mm, share, said): of the surface closed flat over its open borders,
what is not there, at least; thinned (from, to, error_mm): triangles where there were more than
a bone may have, else null.
</source>
        <translation>文件由单独的进程读取，时间与内存受限，文件不会被改动。
--json 另有 missing（borders、border_length_mm、share、said）：将开放边界以平面封闭后，表面至少缺多少；
thinned（from、to、error_mm）：三角形多于一块骨骼所允许的数目时减少前后的数目，否则为 null。
</translation>
    </message>
    <message>
        <source>--joint: %1 does not move</source>
        <translation>--joint：%1 不可动</translation>
    </message>
    <message>
        <source>--joint: there is no joint %1; a joint is named like C6-C7, Ca1-Ca2, hip.L or jaw</source>
        <translation>--joint：没有关节 %1；关节的名称如 C6-C7、Ca1-Ca2、hip.L 或 jaw</translation>
    </message>
    <message>
        <source>--joint: there is no joint %1; near it are %2</source>
        <translation>--joint：没有关节 %1；相近的有 %2</translation>
    </message>
    <message>
        <source>limit (%1)</source>
        <translation>限度（%1）</translation>
    </message>
    <message>
        <source>stopped by</source>
        <translation>受阻于</translation>
    </message>
    <message>
        <source>not assessed: %1</source>
        <translation>未评估：%1</translation>
    </message>
    <message>
        <source>turn</source>
        <translation>转角</translation>
    </message>
    <message>
        <source>ahead</source>
        <translation>前方</translation>
    </message>
    <message>
        <source>slope</source>
        <translation>倾角</translation>
    </message>
    <message>
        <source>swing</source>
        <translation>摆角</translation>
    </message>
    <message>
        <source>snout</source>
        <translation>吻端</translation>
    </message>
    <message>
        <source>eyes</source>
        <translation>眼</translation>
    </message>
    <message>
        <source>%1 into the ground</source>
        <translation>入地 %1</translation>
    </message>
    <message numerus="yes">
        <source>%n joints not assessed</source>
        <translation>
            <numerusform>%n 个关节未评估</numerusform>
        </translation>
    </message>
    <message>
        <source>every joint at its own limit from neutral; heights over the ground and ways from the base in m, angles in degrees</source>
        <translation>每个关节都处于自中性位起的自身极限；离地高度与离基部的距离以 m 计，角度以度计</translation>
    </message>
    <message>
        <source>%1: limits from %2</source>
        <translation>%1：自 %2 起的极限</translation>
    </message>
    <message>
        <source>%1: limits from neutral</source>
        <translation>%1：自中性位起的极限</translation>
    </message>
    <message>
        <source>(Kuznetsov &amp; Tereschenko 2010; Cobley et al. 2013; Hutson &amp; Hutson 2012)</source>
        <translation>（Kuznetsov &amp; Tereschenko 2010；Cobley et al. 2013；Hutson &amp; Hutson 2012）</translation>
    </message>
    <message>
        <source>* ended by a tolerance of the program alone: program default, no source</source>
        <translation>* 仅由程序的容差限定：程序默认值，无来源</translation>
    </message>
    <message>
        <source>degrees from neutral in the direction named, one motion at a time; the side named rises in axial rotation</source>
        <translation>自中性位起沿所示方向的度数，一次一种运动；轴向旋转时所示一侧抬起</translation>
    </message>
    <message>
        <source>tells how far each joint goes and what stops it</source>
        <translation>说明每个关节能转多远以及受什么限制</translation>
    </message>
    <message>
        <source>one joint instead of the whole column; may be given again</source>
        <translation>单个关节，代替整个脊柱；可重复给出</translation>
    </message>
    <message>
        <source>other motions as in the present pose instead of neutral</source>
        <translation>其他运动取当前姿态的角度，而不取中性位</translation>
    </message>
    <message>
        <source>the same with a named pose</source>
        <translation>同上，用某个命名姿态</translation>
    </message>
    <message>
        <source>for machines</source>
        <translation>供机器读取</translation>
    </message>
    <message>
        <source>Each limit is measured from neutral in the direction it is named after, in degrees; one motion moves while
the other two stay. torsion_left of the JSON is axial rotation with the left side up. Neck and tail at their
extremes take every joint to its own limit from neutral, the rest of the animal as it stands.
</source>
        <translation>每个限度都自中性位起，沿其名称所示的方向以度计；一种运动变化时另外两种不变。JSON 中的 torsion_left 为
左侧抬起的轴向旋转。颈部与尾部到极限时，每个关节都到其自中性位起的限度，动物的其余部分保持原状。
</translation>
    </message>
    <message>
        <source>the table has one fault; nothing was written</source>
        <translation>表中有一处错误；没有写出任何内容</translation>
    </message>
    <message numerus="yes">
        <source>the table has %n faults; nothing was written</source>
        <translation>
            <numerusform>表中有 %n 处错误；没有写出任何内容</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 bones, %2 preserved; %3 cells measured, %4 inferred and marked with their rule</source>
        <translation>%1 块骨骼，%2 块已保存；%3 个单元格为实测，%4 个为推断并注明其规则</translation>
    </message>
    <message>
        <source>--blank writes a table of its own and reads none; leave out %1</source>
        <translation>--blank 写出新表，不读取表；请去掉 %1</translation>
    </message>
    <message>
        <source>--blank writes a table and --out a project; give one of the two</source>
        <translation>--blank 写出测量表，--out 写出项目；请只给其一</translation>
    </message>
    <message>
        <source>%1 is there already and is not written over</source>
        <translation>%1 已经存在，不予覆盖</translation>
    </message>
    <message>
        <source>--plan goes with --blank; a table names its plan in a line '# plan: ...'</source>
        <translation>--plan 须与 --blank 同用；测量表在“# plan: ...”一行写明其方案</translation>
    </message>
    <message>
        <source>--out: %1 is the table that is read; give the project a name of its own</source>
        <translation>--out：%1 是所读取的测量表；请为项目另起一个名字</translation>
    </message>
    <message>
        <source>builds a whole animal from a measurement table, blanks inferred and marked</source>
        <translation>由测量表建成整只动物，空格由推断补出并加标记</translation>
    </message>
    <message>
        <source>writes a blank table with all bones instead, to be filled in</source>
        <translation>改为写出含全部骨骼的空白表，供填写</translation>
    </message>
    <message>
        <source>of the blank table: 'high browser' (default), 'low browser', mammal or bird</source>
        <translation>空白表的体型方案：'high browser'（默认）、'low browser'、mammal 或 bird</translation>
    </message>
    <message>
        <source>prints the summary for machines</source>
        <translation>供机器读取的概要</translation>
    </message>
    <message>
        <source>The animal stands in its neutral articulation, saved as the pose 'neutral standing'. Every fault of the table
is told with line, column, bone and measure; warnings do not stop the work. Measured cells that are hard to
believe are remarked on: against the bones beside them, the other side, the bone's other measures and
the size of the animal.
</source>
        <translation>动物以中性关节位站立，保存为姿态“neutral standing”。表中每处错误都给出行、列、骨骼与量度；
警告不会中止工作。难以置信的实测单元格会加以提示：与相邻骨骼、另一侧、
该骨骼的其他量度以及动物的大小相比较。
</translation>
    </message>
    <message>
        <source>An estimate, not an engineering document.</source>
        <translation>仅为估算，不是工程文件。</translation>
    </message>
    <message>
        <source>mass by circumference: %1</source>
        <translation>按周长的质量：%1</translation>
    </message>
    <message>
        <source>log10 M(g) = 2.749 log10(humerus + femur, mm) - 1.104, %1; %2</source>
        <translation>log10 M(g) = 2.749 log10(肱骨 + 股骨, mm) - 1.104，%1；%2</translation>
    </message>
    <message>
        <source>mass by volume: %1</source>
        <translation>按体积的质量：%1</translation>
    </message>
    <message>
        <source>hulls around the bones x %1 x density; %2</source>
        <translation>骨骼凸包 × %1 × 密度；%2</translation>
    </message>
    <message>
        <source>part</source>
        <translation>部位</translation>
    </message>
    <message>
        <source>hull factor</source>
        <translation>凸包系数</translation>
    </message>
    <message>
        <source>low</source>
        <translation>低</translation>
    </message>
    <message>
        <source>high</source>
        <translation>高</translation>
    </message>
    <message>
        <source>from measured circumferences of humerus and femur; %1</source>
        <translation>由实测的肱骨与股骨周长；%1</translation>
    </message>
    <message>
        <source>from inferred circumferences of humerus and femur; %1</source>
        <translation>由推断的肱骨与股骨周长；%1</translation>
    </message>
    <message>
        <source>balance of the %1: centre of mass %2 over the ground</source>
        <translation>%1的平衡：质心离地 %2</translation>
    </message>
    <message>
        <source>%1: '%2' is not a part and its number; write %3, one of %4</source>
        <translation>%1：“%2”不是一个部分及其数值；请写作 %3，部分为 %4 之一</translation>
    </message>
    <message>
        <source>times the hull's volume</source>
        <translation>倍凸包体积</translation>
    </message>
    <message>
        <source>%1 needs a %2</source>
        <translation>%1 需要 %2</translation>
    </message>
    <message>
        <source>give both --humerus-mm and --femur-mm, the minimum circumferences of the shafts, or a project</source>
        <translation>请同时给出 --humerus-mm 和 --femur-mm（骨干最小周长），或给出一个项目</translation>
    </message>
    <message>
        <source>%1 and a project do not go together: the project has its own circumferences</source>
        <translation>%1 与项目不能同用：项目有自己的周长</translation>
    </message>
    <message>
        <source>mass as a range, from two circumferences or from the body's volume, and balance</source>
        <translation>质量的范围，由两个周长或由身体体积得出；以及平衡</translation>
    </message>
    <message>
        <source>minimum shaft circumference of the humerus; without a file</source>
        <translation>肱骨骨干最小周长；不给文件时使用</translation>
    </message>
    <message>
        <source>minimum shaft circumference of the femur; without a file</source>
        <translation>股骨骨干最小周长；不给文件时使用</translation>
    </message>
    <message>
        <source>balance of a named pose</source>
        <translation>某个命名姿态的平衡</translation>
    </message>
    <message>
        <source>kg/m3 of head, neck, trunk, tail, fore_limbs or hind_limbs; may be repeated</source>
        <translation>head、neck、trunk、tail、fore_limbs 或 hind_limbs 的 kg/m3；可重复给出</translation>
    </message>
    <message>
        <source>volume of a part over that of the hull around its bones, flesh included; else 1.21</source>
        <translation>一个部分（含软组织）的体积与其骨骼凸包体积之比；否则为 1.21</translation>
    </message>
    <message>
        <source>prints the figures for machines</source>
        <translation>供机器读取的数值</translation>
    </message>
    <message>
        <source>Every mass is an estimate and given with its low and high. Circumferences: Campione &amp; Evans 2012, mean error
25.63 %, not a bound. Volume: convex hulls around the bones x 1.21 x density (Sellers et al. 2012), error 20 % (Brassey &amp;
Sellers 2014). Balance is told of the pose as it stands; this is not an engineering document.
</source>
        <translation>每个质量都是估计，连同其低值与高值给出。周长：Campione &amp; Evans 2012，平均误差 25.63 %，并非界限。
体积：骨骼的凸包 x 1.21 x 密度（Sellers et al. 2012），误差 20 %（Brassey &amp; Sellers 2014）。
平衡就现有姿态而言；这不是工程文件。
</translation>
    </message>
    <message>
        <source>%1: all joints at neutral, standing</source>
        <translation>%1：全部关节处于中性位，站立</translation>
    </message>
    <message numerus="yes">
        <source>%n joints with facets</source>
        <translation>
            <numerusform>%n 个有关节面的关节</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 articulated of %2</source>
        <translation>%2中已关节化 %1 个</translation>
    </message>
    <message>
        <source>%1; facet centres farthest apart at %2, by %3</source>
        <translation>%1；关节面中心相距最远处为 %2，相距 %3</translation>
    </message>
    <message>
        <source>nothing to do: add --out FILE2.zyga for the project at neutral, or --json</source>
        <translation>没有要做的事：请加上 --out FILE2.zyga 以写出中性位的项目，或加上 --json</translation>
    </message>
    <message>
        <source>--out: the name is empty; write --out FILE2.zyga</source>
        <translation>--out：名称为空；请写 --out FILE2.zyga</translation>
    </message>
    <message>
        <source>brings every joint to osteological neutral pose (ONP) and stands the animal on the ground</source>
        <translation>使每个关节回到骨学中性姿态（ONP），并让动物站在地面上</translation>
    </message>
    <message>
        <source>the project to write; may be left out with --json</source>
        <translation>要写出的项目；用 --json 时可省略</translation>
    </message>
    <message>
        <source>how each joint with facets comes to rest, for machines</source>
        <translation>每个有关节面的关节如何归位，供机器读取</translation>
    </message>
    <message>
        <source>The present pose becomes all angles zero, with shoulders and hips turned so that the feet stand; assumptions
that are given are written into the project, because the bones stand by them. Named poses stay.
In JSON: residual_mm is how far the facets stay from centred, cartilage_turn_deg how far the cartilage of
thickness t_mm turns the joint dorsally, h_mm the facets' height over the centre of rotation.
</source>
        <translation>当前姿态的所有角度变为零，肩与髋则转到使脚站住；给出的假设写入项目，因为骨骼据此站立。
命名姿态不变。
JSON 中：residual_mm 为关节面偏离居中的距离，cartilage_turn_deg 为厚度 t_mm 的软骨使关节向背侧转动的角度，
h_mm 为关节面高出旋转中心的高度。
</translation>
    </message>
    <message>
        <source>pixels</source>
        <translation>像素</translation>
    </message>
    <message>
        <source>--view: a person at eye height cannot look from above or below; choose another view or leave out the lens</source>
        <translation>--view：站立的人不能从上方或下方观看；请选择其他视图，或去掉镜头选项</translation>
    </message>
    <message>
        <source>horizon at row %1 of %2</source>
        <translation>地平线位于第 %1 行（共 %2 行）</translation>
    </message>
    <message>
        <source>horizon outside the picture</source>
        <translation>地平线在画面之外</translation>
    </message>
    <message>
        <source>lens %1 (picture %2 wide), eye at %3, %4 from the middle of the animal, %5</source>
        <translation>镜头 %1（画幅宽 %2），视高 %3，距动物中部 %4，%5</translation>
    </message>
    <message>
        <source>some of the animal is outside the picture; a greater distance shows more</source>
        <translation>动物的一部分在画面之外；增大距离可显示更多</translation>
    </message>
    <message>
        <source>--passes: '%1' is not among %2; put commas between them</source>
        <translation>--passes：“%1”不在 %2 之中；各项之间用逗号隔开</translation>
    </message>
    <message>
        <source>--look-at: %1 is not drawn; add it to --bones</source>
        <translation>--look-at：%1 没有绘制；请把它加入 --bones</translation>
    </message>
    <message>
        <source>nothing of the animal is in this picture: the eye is too near or looks past it; leave out --distance-m, or name what it shall look at with --look-at</source>
        <translation>画面中没有动物的任何部分：视点太近，或没有对准它；请去掉 --distance-m，或用 --look-at 指明要看的骨骼</translation>
    </message>
    <message>
        <source>wrote %1, %2 x %3 pixels</source>
        <translation>已写入 %1，%2 x %3 像素</translation>
    </message>
    <message>
        <source>wrote %1, white at %2 from the eye, black at %3</source>
        <translation>已写入 %1，白色距眼睛 %2，黑色 %3</translation>
    </message>
    <message>
        <source>--out: %1 must end in .png</source>
        <translation>--out：%1 的扩展名须为 .png</translation>
    </message>
    <message>
        <source>--body-guide: passes are of bones alone; leave out --passes</source>
        <translation>--body-guide：分层图只画骨骼；请去掉 --passes</translation>
    </message>
    <message>
        <source>draws the posed skeleton, the same bytes every time</source>
        <translation>绘制摆好姿态的骨架，每次得到相同的字节</translation>
    </message>
    <message>
        <source>left, right, dorsal, ventral, cranial, caudal or three-quarter</source>
        <translation>left、right、dorsal、ventral、cranial、caudal 或 three-quarter</translation>
    </message>
    <message>
        <source>the picture to write</source>
        <translation>要写出的图片</translation>
    </message>
    <message>
        <source>only these bones, and no ground: C5,C6,humerus.L,manus.R,pelvis and the like</source>
        <translation>只画这些骨骼，不画地面：如 C5,C6,humerus.L,manus.R,pelvis</translation>
    </message>
    <message>
        <source>bones that fill the picture; the others stay in sight</source>
        <translation>充满画面的骨骼；其他骨骼仍然可见</translation>
    </message>
    <message>
        <source>the body guide around the bones, which is not anatomy; it hides them</source>
        <translation>骨骼周围的体形参考（不是解剖结构）；它会遮住骨骼</translation>
    </message>
    <message>
        <source>1600 unless said otherwise; the height follows from the animal</source>
        <translation>未另说明时为 1600；高度由动物而定</translation>
    </message>
    <message>
        <source>no background: bones and their shadow alone</source>
        <translation>没有背景：只有骨骼及其投影</translation>
    </message>
    <message>
        <source>in perspective, focal length for a picture 36 mm wide; 50 unless said otherwise</source>
        <translation>透视画面，焦距按画幅宽 36 毫米计；未另说明时为 50</translation>
    </message>
    <message>
        <source>of the eye over the ground, 1.6 unless said otherwise; the camera is level</source>
        <translation>眼睛离地的高度，未另说明时为 1.6；相机保持水平</translation>
    </message>
    <message>
        <source>looks from this side: 0 from in front, 90 from the left</source>
        <translation>从这一侧看：0 自前方，90 自左侧</translation>
    </message>
    <message>
        <source>from the eye to the middle of the animal; else as near as shows all</source>
        <translation>从眼睛到动物中部的距离；未给出时取能显示全部的最近处</translation>
    </message>
    <message>
        <source>draws the horizon behind the animal</source>
        <translation>在动物背后画出地平线</translation>
    </message>
    <message>
        <source>shaded,shadow,outline,depth,direction,bones,evidence: each a picture of its own</source>
        <translation>shaded,shadow,outline,depth,direction,bones,evidence：每项各为一张图片</translation>
    </message>
    <message>
        <source>Preserved bones are warm, mirrored ones darker, inferred ones grey. Any option of the lens makes a
perspective picture of 3:2 in which upright things stay upright. Passes lie exactly over each other and are
written as FILE-shaded.png and so on; FILE-bones.csv tells which colour is which bone. Their alpha is the
bones' cover. The direction pass is a normals pass: red right, green up, blue towards the eye.
</source>
        <translation>已保存的骨骼为暖色，镜像的较暗，推断的为灰色。给出任何镜头选项都得到 3:2 的透视画面，
其中竖直之物保持竖直。各分层彼此完全重合，写成 FILE-shaded.png 等；FILE-bones.csv 说明何种颜色
对应哪块骨骼。其 alpha 为骨骼的覆盖率。direction 分层为法线：红朝右，绿朝上，蓝朝向眼睛。
</translation>
    </message>
    <message>
        <source>making the body guide</source>
        <translation>正在生成体形参考</translation>
    </message>
    <message>
        <source>--pose: there is no pose '%1'; the project has no named poses</source>
        <translation>--pose：没有姿态“%1”；这个项目没有命名的姿态</translation>
    </message>
    <message>
        <source>--pose: there is no pose '%1'; there are %2</source>
        <translation>--pose：没有姿态“%1”；有 %2</translation>
    </message>
    <message>
        <source>--bone: there is no bone %1; a bone is named like skull, C7, Ca30 or metatarsal3.L</source>
        <translation>--bone：没有骨骼 %1；骨骼的名称如 skull、C7、Ca30 或 metatarsal3.L</translation>
    </message>
    <message>
        <source>--point: %1 has no landmark '%2'; it has %3</source>
        <translation>--point：%1 没有标志点“%2”；它有 %3</translation>
    </message>
    <message>
        <source>--base: %1 does not carry %2</source>
        <translation>--base：%1 并不承载 %2</translation>
    </message>
    <message>
        <source>--bone: no joint that could turn carries %1</source>
        <translation>--bone：没有可转动的关节承载 %1</translation>
    </message>
    <message>
        <source>--to: '%1' is not three numbers with commas between, such as 4.2,0,0.3</source>
        <translation>--to：“%1”不是以逗号隔开的三个数，例如 4.2,0,0.3</translation>
    </message>
    <message>
        <source>--gaze: '%1' is not three numbers with commas between, such as 1,0,-0.5, nor the word keep</source>
        <translation>--gaze：“%1”不是以逗号隔开的三个数，例如 1,0,-0.5，也不是 keep</translation>
    </message>
    <message>
        <source>--gaze: 0,0,0 is no direction</source>
        <translation>--gaze：0,0,0 不是方向</translation>
    </message>
    <message>
        <source>%1, %2, %3 m</source>
        <translation>%1，%2，%3 m</translation>
    </message>
    <message>
        <source>nearest pose: %1 short, at %2</source>
        <translation>最近的姿态：差 %1，位于 %2</translation>
    </message>
    <message>
        <source>nearest pose within range: %1 short, at %2</source>
        <translation>活动范围内最近的姿态：差 %1，位于 %2</translation>
    </message>
    <message>
        <source>%1 reaches %2</source>
        <translation>%1 到达 %2</translation>
    </message>
    <message>
        <source>%1 does not reach %2</source>
        <translation>%1 到不了 %2</translation>
    </message>
    <message>
        <source>the chain is stretched out</source>
        <translation>链条已完全伸展</translation>
    </message>
    <message>
        <source>%1 out of range</source>
        <translation>%1 超出活动范围</translation>
    </message>
    <message>
        <source>gaze off by %1</source>
        <translation>视线偏差 %1</translation>
    </message>
    <message>
        <source>brings a bone to a point inside the joints' ranges and writes the project anew</source>
        <translation>使一块骨骼在关节的活动范围内到达一点，并写出新的项目</translation>
    </message>
    <message>
        <source>what is brought there: skull, C7, Ca30, metatarsal3.L</source>
        <translation>要到达的骨骼：skull、C7、Ca30、metatarsal3.L</translation>
    </message>
    <message>
        <source>the point in metres: x forwards, y left, z up from the ground</source>
        <translation>以米计的点：x 向前，y 向左，z 自地面向上</translation>
    </message>
    <message>
        <source>the bone's landmark that goes there; the snout of a skull by itself</source>
        <translation>到达该点的标志点；头骨未另说明时为吻端</translation>
    </message>
    <message>
        <source>direction the bone shall face; keep: head orientation as it is</source>
        <translation>骨骼应朝的方向；keep：保持头部的现有朝向</translation>
    </message>
    <message>
        <source>even (each joint gives the same share of its range) or base</source>
        <translation>even（每个关节给出自身范围的相同份额）或 base</translation>
    </message>
    <message>
        <source>allows beyond limits; the joints out of range are named</source>
        <translation>允许越过限度；超出活动范围的关节会被指出</translation>
    </message>
    <message>
        <source>joints that stay as they are</source>
        <translation>保持不变的关节</translation>
    </message>
    <message>
        <source>the joint the bend begins at; else the base of neck, tail or limb</source>
        <translation>弯曲开始的关节；未给出时为颈、尾或肢的根部</translation>
    </message>
    <message>
        <source>Without --point the snout, chin or sole of the bone is meant where it has one, else its middle. The target comes
before the orientation, the orientation before the even bend. Where the point can't be had the nearest pose within
range is written, with what it falls short and the joints that stop it, worst first. The result becomes the present
pose; with --pose it also replaces the named one. Exit 1: the point is missed by more than 1 mm.
</source>
        <translation>不给 --point 时，有吻端、下颌前端或足底的骨骼取该处，否则取骨骼中部。目标先于朝向，朝向先于均匀弯曲。
到不了该点时，写出活动范围内最接近的姿态，并说明所差的距离与限制它的关节（从最差的排起）。
结果成为当前姿态；用 --pose 时也取代所指的命名姿态。退出码 1：与该点相差超过 1 毫米。
</translation>
    </message>
    <message>
        <source>--out: %1 must end in .pdf or .html</source>
        <translation>--out：%1 的扩展名须为 .pdf 或 .html</translation>
    </message>
    <message>
        <source>--numbers: %1 must end in .csv or .json</source>
        <translation>--numbers：%1 的扩展名须为 .csv 或 .json</translation>
    </message>
    <message>
        <source>writes a report on the pose and the project's claims that others can check</source>
        <translation>写出关于姿态与项目论断的报告，供他人核查</translation>
    </message>
    <message>
        <source>the report</source>
        <translation>报告</translation>
    </message>
    <message>
        <source>its numbers as a table</source>
        <translation>其数值的表格</translation>
    </message>
    <message>
        <source>one page: the project's claims and what they rest on</source>
        <translation>单页：项目的论断及其依据</translation>
    </message>
    <message>
        <source>without heights, reach, ranges and pressure</source>
        <translation>不含高度、可达、范围与血压</translation>
    </message>
    <message>
        <source>Pose with a traced picture, findings, claims, specimen, evidence and sources, assumptions, limits of the
neck, studies, mass and balance, angles, cautions. There is no clock in it: the same project gives the same
bytes.
</source>
        <translation>姿态及绘制的图片、判定结果、论断、标本、证据与出处、假设、颈部的限度、研究、质量与平衡、角度、注意事项。
其中没有时间：同一项目给出相同的字节。
</translation>
    </message>
    <message>
        <source>there is no verb '%1'; there are %2</source>
        <translation>没有动词“%1”；有 %2</translation>
    </message>
    <message>
        <source>zygapose [FILE]         opens the window, on a project (.zyga) or a measurement table (.csv)
zygapose VERB ...       works in batch, without a display
</source>
        <translation>zygapose [FILE]         打开窗口，载入项目（.zyga）或测量表（.csv）
zygapose VERB ...       批处理，不需要显示器
</translation>
    </message>
    <message>
        <source>help VERB tells a verb's options</source>
        <translation>help VERB 说明一个动词的选项</translation>
    </message>
    <message>
        <source>Every verb takes --language CODE: en or zh_CN.</source>
        <translation>每个命令都接受 --language CODE：en 或 zh_CN。</translation>
    </message>
    <message>
        <source>A project written as FILE.zygazip is one file with its scans inside: a zip container.
Every verb reads both kinds.</source>
        <translation>写为 FILE.zygazip 的项目是一个文件，扫描就在其中：它是 ZIP 容器。
每个命令都读取这两种。</translation>
    </message>
    <message>
        <source>Exit 0: done, and for assess within range; 1: assess finds something out of range; 2: bad input, told on stderr.
</source>
        <translation>退出码 0：完成，assess 时在活动范围内；1：assess 发现超出范围；2：输入有误，见 stderr。
</translation>
    </message>
    <message>
        <source>[options]</source>
        <translation>[选项]</translation>
    </message>
    <message>
        <source>the output could not be written</source>
        <translation>无法写出结果</translation>
    </message>
    <message>
        <source>--bone: there is no bone '%1'</source>
        <translation>--bone：没有骨骼“%1”</translation>
    </message>
    <message>
        <source>--bone: there are more bones than files</source>
        <translation>--bone：骨骼比文件多</translation>
    </message>
    <message>
        <source>--bone names the bones of files one after the other; give the files of the folder instead of the folder</source>
        <translation>--bone 依次给出各文件的骨骼；请给出文件夹中的文件，而不是文件夹</translation>
    </message>
    <message>
        <source>%1: its name does not tell which bone it is; give --bone ID</source>
        <translation>%1：名称未表明是哪块骨骼；请给出 --bone 编号</translation>
    </message>
    <message>
        <source>none of the files can be brought in</source>
        <translation>没有一个文件可以导入</translation>
    </message>
    <message>
        <source>the tables have marks of bones that are not among the scans: %1</source>
        <translation>表格中有不在这些扫描之列的骨骼的标记：%1</translation>
    </message>
    <message>
        <source>%1: fit the animal to them (--measures), or give --unit</source>
        <translation>%1：请让动物与之相配（--measures），或给出 --unit</translation>
    </message>
    <message>
        <source>%1 is not marked enough to be measured</source>
        <translation>%1 的标记不足，无法测量</translation>
    </message>
    <message>
        <source>%1 measures %2</source>
        <translation>%1 量得%2</translation>
    </message>
    <message>
        <source>%1 can be assessed</source>
        <translation>%1 可以评定</translation>
    </message>
    <message>
        <source>--plan makes an animal of its own: leave out one of --plan and --into</source>
        <translation>--plan 会做出独立的动物：--plan 与 --into 只能给一个</translation>
    </message>
    <message>
        <source>puts bone scans in the place of sculpted bones</source>
        <translation>把骨骼扫描放到塑形骨骼的位置</translation>
    </message>
    <message>
        <source>which bone the file is, once a file in order; guessed from its name unless said</source>
        <translation>文件是哪块骨骼，按文件顺序每个给一次；未给出时由名称推测</translation>
    </message>
    <message>
        <source>the files' unit; guessed from the size of all together unless said</source>
        <translation>文件的单位；未说明时按全部文件的尺寸一并推测</translation>
    </message>
    <message>
        <source>finds facets, ends of the centra and neural canals where neighbours lie in articulation</source>
        <translation>在相邻骨骼按关节相接摆放之处寻找关节面、椎体端面和椎管</translation>
    </message>
    <message>
        <source>marks that vertebrae still lack come from the nearest one that has some</source>
        <translation>椎骨仍缺的标记取自最近的已有标记的椎骨</translation>
    </message>
    <message>
        <source>bone,landmark,x (mm),y (mm),z (mm) in the axes of the scans</source>
        <translation>bone,landmark,x (mm),y (mm),z (mm)，按扫描的坐标轴</translation>
    </message>
    <message>
        <source>one facet a row in the axes of the scans; marks of tables go before suggested ones</source>
        <translation>每行一个关节面，按扫描的坐标轴；表格的标记优先于建议的标记</translation>
    </message>
    <message>
        <source>the landmarks that came of it, as --landmarks reads them</source>
        <translation>由此得到的标志点，格式同 --landmarks 所读</translation>
    </message>
    <message>
        <source>the facets that came of it, as --facets reads them</source>
        <translation>由此得到的关节面，格式同 --facets 所读</translation>
    </message>
    <message>
        <source>what the landmarks measure goes into the table: bones around the scans follow</source>
        <translation>标志点量得的值写入表格：扫描周围的骨骼随之改变</translation>
    </message>
    <message>
        <source>the project that gets them</source>
        <translation>接收它们的项目</translation>
    </message>
    <message>
        <source>instead of --into: they make an animal of their own, measured by them</source>
        <translation>代替 --into：扫描自成一只动物，尺寸由它们量得</translation>
    </message>
    <message>
        <source>the project to write; cleaned meshes are kept beside it in the folder scans, those of a FILE.zygazip inside it</source>
        <translation>要写出的项目；清理后的网格保存在其旁的 scans 文件夹中，FILE.zygazip 的则保存在文件之内</translation>
    </message>
    <message>
        <source>Every file is read by a process of its own with limits on time and memory. Nothing is written unless all
files that are named can be used; what a folder holds beside bones is told and left out. A file in which
several parts are named as bones gives them all. Bones keep the frame that they share.

Mammals and birds have a column alone, with as many vertebrae as the names of the files say; a body plan
can also be named as tables name it: high browser, low browser.

Columns of a table of facets: bone, facet (prezyg.L, prezyg.R, postzyg.L, postzyg.R), centre x (mm),
centre y (mm), centre z (mm), normal x, normal y, normal z, length (mm), width (mm); where known slide x,
slide y, slide z (direction of sliding), radius (mm), residual (mm), confidence, outline (mm).

--json: unit, unit_sure, size_factor (times the animal's bones); bones: file, part, bone, bone_confidence,
unit, unit_by (size, format, person), unit_sure, placed, mid_plane, neural_canal, landmarks (place_mm), facets
(centre_mm, normal, slide, area_mm2, length_mm, width_mm, residual_mm, confidence from 0 to 1, set_by, taken),
left_open (why not); joints: id, found, confidence, ball_and_socket, disc_mm, joint_space_mm, why_not;
left_out; carried (to, from, misfit, marks, left_out): marks from other bones; lacking; warnings. Of each
bone also thinned (from, to, error_mm) where it had too many triangles;
doubts (mark, id, why): marks that can hardly be right; missing (borders, border_length_mm, share,
one_sided_share, said): what the scan lacks of a closed and symmetric surface, at least; advised
(correction, why): whether its marks tell a shear or a compression. Places are mm in the file's own frame.
Suggestions less sure than 0.5 are told and not taken.
</source>
        <translation>每个文件由单独的进程读取，时间和内存有限制。所列文件须全部可用，
否则不写出任何内容；文件夹中不是骨骼的内容会说明并略去。
若一个文件有几个部分以骨骼命名，则全部取用。骨骼保持其共同的坐标系。

哺乳动物与鸟类只有脊柱，椎骨数目由文件名得出；体型方案也可按表格中的名称给出：
high browser、low browser。

关节面表格的列：bone、facet（prezyg.L、prezyg.R、postzyg.L、postzyg.R）、centre x (mm)、
centre y (mm)、centre z (mm)、normal x、normal y、normal z、length (mm)、width (mm)；已知时还有 slide x、
slide y、slide z（滑动方向）、radius (mm)、residual (mm)、confidence、outline (mm)。

--json：unit、unit_sure、size_factor（动物骨骼的倍数）；bones：file、part、bone、bone_confidence、
unit、unit_by（size、format、person）、unit_sure、placed、mid_plane、neural_canal、landmarks（place_mm）、facets
（centre_mm、normal、slide、area_mm2、length_mm、width_mm、residual_mm、0 至 1 的 confidence、set_by、taken）、
left_open（为何没有）；joints：id、found、confidence、ball_and_socket、disc_mm、joint_space_mm、why_not；
left_out；carried（to、from、misfit、marks、left_out）：来自其他骨骼的标记；lacking；warnings。
每块骨骼另有 thinned（from、to、error_mm），若其三角形过多；doubts（mark、id、why）：几乎不可能正确的标记；missing
（borders、border_length_mm、share、one_sided_share、said）：扫描相对封闭且对称的表面至少缺什么；
advised（correction、why）：标记是否表明剪切或压缩。
位置以毫米计，在文件自身的坐标系中。可信度低于 0.5 的建议只说明，
不采用。
</translation>
    </message>
    <message>
        <source>%1, part %2</source>
        <translation>%1，部分 %2</translation>
    </message>
    <message>
        <source>%1: give --unit</source>
        <translation>%1：请给出 --unit</translation>
    </message>
    <message>
        <source>taken to be in %1</source>
        <translation>视为以 %1 为单位</translation>
    </message>
    <message>
        <source>taken to be in %1, which is not sure</source>
        <translation>视为以 %1 为单位，但不确定</translation>
    </message>
    <message>
        <source>%1 is %2</source>
        <translation>%1 是 %2</translation>
    </message>
    <message>
        <source>placed by its landmarks</source>
        <translation>按标志点放置</translation>
    </message>
    <message>
        <source>placed by a guess</source>
        <translation>按猜测放置</translation>
    </message>
    <message>
        <source>in doubt: %1</source>
        <translation>存疑：%1</translation>
    </message>
    <message>
        <source>advised: %1</source>
        <translation>建议：%1</translation>
    </message>
    <message>
        <source>found but not sure enough, left to be marked by hand: %1</source>
        <translation>已找到但不够确定，留待手工标记：%1</translation>
    </message>
    <message>
        <source>%1: facets, ball and socket suggested, %2 sure</source>
        <translation>%1：建议了关节面、关节髁与关节窝，可信度 %2</translation>
    </message>
    <message>
        <source>%1: facets and flat ends of the centra suggested, %2 sure</source>
        <translation>%1：建议了关节面与椎体的平坦端面，可信度 %2</translation>
    </message>
    <message>
        <source>reading %1 %2</source>
        <translation>正在读取 %1 %2</translation>
    </message>
    <message>
        <source>reading scans %1</source>
        <translation>正在读取扫描 %1</translation>
    </message>
    <message>
        <source>sculpting bones</source>
        <translation>正在塑形骨骼</translation>
    </message>
    <message>
        <source>making shapes</source>
        <translation>正在生成形体</translation>
    </message>
    <message>
        <source>N of 1:N</source>
        <translation>1:N 中的 N</translation>
    </message>
    <message>
        <source>--out: %1 must end in .pdf, .svg or .png</source>
        <translation>--out：%1 的扩展名须为 .pdf、.svg 或 .png</translation>
    </message>
    <message>
        <source>drawing</source>
        <translation>正在绘制</translation>
    </message>
    <message>
        <source>--width: only a .png has pixels</source>
        <translation>--width：只有 .png 才有像素</translation>
    </message>
    <message>
        <source>draws a page to scale, the same bytes every time</source>
        <translation>按比例绘制一页，每次得到相同的字节</translation>
    </message>
    <message>
        <source>side, three-views, evidence, neck or plate</source>
        <translation>side、three-views、evidence、neck 或 plate</translation>
    </message>
    <message>
        <source>a plate of these bones in five views: C5, manus.L, pelvis,sacrum and the like</source>
        <translation>这些骨骼的五视图骨骼图版：如 C5、manus.L、pelvis,sacrum</translation>
    </message>
    <message>
        <source>the page to write</source>
        <translation>要写出的页面</translation>
    </message>
    <message>
        <source>a4, a3, a2 or a1, in landscape format</source>
        <translation>a4、a3、a2 或 a1，横向</translation>
    </message>
    <message>
        <source>1:N instead of the largest round scale that fits</source>
        <translation>1:N，代替能放下的最大整数比例</translation>
    </message>
    <message>
        <source>shaded, outline, silhouette or in-body (white before the body guide's dark shape)</source>
        <translation>shaded、outline、silhouette 或 in-body（体形参考的深色轮廓上的白色骨骼）</translation>
    </message>
    <message>
        <source>of the human figure, m, or none</source>
        <translation>人形的高度（米），或 none</translation>
    </message>
    <message>
        <source>the verdict's shape on every joint</source>
        <translation>每个关节上表示判定的形状</translation>
    </message>
    <message>
        <source>bones toned by their evidence</source>
        <translation>骨骼按证据着色</translation>
    </message>
    <message>
        <source>measured heights and lengths</source>
        <translation>量得的高度与长度</translation>
    </message>
    <message>
        <source>the ground as a line</source>
        <translation>以线表示的地面</translation>
    </message>
    <message>
        <source>numbered call-outs with their legend</source>
        <translation>编号注释及其图例</translation>
    </message>
    <message>
        <source>no paper behind the drawing</source>
        <translation>图画背后没有纸</translation>
    </message>
    <message>
        <source>instead of the specimen's name</source>
        <translation>代替标本的名称</translation>
    </message>
    <message>
        <source>of a .png, 5000 unless said otherwise, up to 16000</source>
        <translation>.png 的宽度，未另说明时为 5000，最大 16000</translation>
    </message>
    <message>
        <source>What is not said is as the project's own sheet has it. In an SVG every outlined bone is a group with the
bone's id, its edges editable paths, and the unit is the millimetre.
Not an engineering document; local codes and licensed practice decide.
</source>
        <translation>未给出的选项按项目自己的图版。SVG 中每块画出轮廓的骨骼为一个组，带有骨骼的 id，
其边缘为可编辑的路径，单位为毫米。
并非工程文件；以当地规范和持证从业者的意见为准。
</translation>
    </message>
    <message>
        <source>stand</source>
        <translation>站立</translation>
    </message>
    <message>
        <source>trunk slope</source>
        <translation>躯干坡度</translation>
    </message>
    <message>
        <source>%1 rising forwards, roll %2</source>
        <translation>%1，向前升高，侧倾 %2</translation>
    </message>
    <message>
        <source>hip height</source>
        <translation>髋高</translation>
    </message>
    <message>
        <source>shoulder height</source>
        <translation>肩高</translation>
    </message>
    <message>
        <source>glenoacetabular</source>
        <translation>肩臼至髋臼</translation>
    </message>
    <message>
        <source>base of neck</source>
        <translation>颈根</translation>
    </message>
    <message>
        <source>%1 rising forwards (%2)</source>
        <translation>%1，向前升高（%2）</translation>
    </message>
    <message>
        <source>base of tail</source>
        <translation>尾根</translation>
    </message>
    <message>
        <source>%1 rising backwards</source>
        <translation>%1，向后升高</translation>
    </message>
    <message>
        <source>shoulder blades</source>
        <translation>肩胛骨</translation>
    </message>
    <message>
        <source>%1 left, %2 right, to the horizontal</source>
        <translation>左 %1、右 %2，相对水平</translation>
    </message>
    <message>
        <source>%1 over the ground</source>
        <translation>离地 %1</translation>
    </message>
    <message>
        <source>misses by %1</source>
        <translation>偏离 %1</translation>
    </message>
    <message>
        <source>misses by %1; stopped by %2</source>
        <translation>偏离 %1；受 %2 限制</translation>
    </message>
    <message>
        <source>puts the animal on its feet, as it is or in a stance, and writes the project anew</source>
        <translation>让动物以现状或某种站姿站立，并写出新的项目</translation>
    </message>
    <message>
        <source>alert, browse, drink, walk-1 to walk-4 or rear; without it the limbs stay as they are</source>
        <translation>alert、browse、drink、walk-1 到 walk-4 或 rear；不给出时四肢保持原样</translation>
    </message>
    <message>
        <source>the readings for machines</source>
        <translation>供机器读取的读数</translation>
    </message>
    <message>
        <source>Without --stance the height, slope and roll of the trunk follow from the limbs as they are; feet held well over
their fellow's ground do not carry. A stance sets everything anew but the shoulder blades; walk-1 to walk-4 are
the moments at which left hind, left fore, right hind and right fore foot swing. Slopes are to the horizontal;
the trunk's is that of the line through the dorsal centra, the neck's that of the last cervical (--horizontal-by), the
tail's that of the line through the first five caudals. The result becomes the present pose; with --pose it
also replaces the named one. Exit 1: a foot misses, a joint is out of range, bones collide, or the stance falls short; the
project is written all the same.
</source>
        <translation>不给出 --stance 时，躯干的高度、坡度与侧倾由四肢现状得出；明显高于同侧地面的脚不承重。
姿势会重新设定除肩胛骨外的一切；walk-1 至 walk-4 是左后脚、左前脚、右后脚、右前脚摆动的时刻。
坡度均相对于水平面；躯干的坡度是背椎椎体连线的坡度，颈部的是最后一节颈椎的坡度（--horizontal-by），
尾部的是前五节尾椎连线的坡度。结果成为当前姿态；给出 --pose 时还替换所指名的姿态。
退出码 1：有脚未着地、有关节超出活动范围、骨骼相撞或姿势未能达到；项目仍照常写出。
</translation>
    </message>
    <message>
        <source>%1: write the smaller number first, as in LOW,HIGH</source>
        <translation>%1：请先写较小的数，如 LOW,HIGH</translation>
    </message>
    <message>
        <source>samples</source>
        <translation>抽样数</translation>
    </message>
    <message>
        <source>--plot: %1 could not be drawn</source>
        <translation>--plot：%1 无法绘制</translation>
    </message>
    <message>
        <source>--out: %1 must end in .json</source>
        <translation>--out：%1 的扩展名须为 .json</translation>
    </message>
    <message>
        <source>--plot: %1 must end in .svg, .pdf or .png</source>
        <translation>--plot：%1 的扩展名须为 .svg、.pdf 或 .png</translation>
    </message>
    <message>
        <source>tells what follows from a pose: heights, reach, ranges, their uncertainty</source>
        <translation>说明由一个姿态得出什么：高度、可达、范围及其不确定性</translation>
    </message>
    <message>
        <source>elevation, envelope, range, spread, pressure or stress</source>
        <translation>elevation、envelope、range、spread、pressure 或 stress</translation>
    </message>
    <message>
        <source>the numbers as a file</source>
        <translation>写入文件的数值</translation>
    </message>
    <message>
        <source>the figure</source>
        <translation>图</translation>
    </message>
    <message>
        <source>the numbers on standard output</source>
        <translation>打印在标准输出上的数值</translation>
    </message>
    <message>
        <source>envelope: the side outline without the space sideways, which takes longest</source>
        <translation>envelope：只求侧面轮廓，不求最费时的侧向空间</translation>
    </message>
    <message>
        <source>spread: of the samples; the same seed gives the same numbers; else 1</source>
        <translation>spread：抽样的种子；同一种子给出相同的数值；未给出时为 1</translation>
    </message>
    <message>
        <source>spread: how many samples; else 400</source>
        <translation>spread：抽样数；未给出时为 400</translation>
    </message>
    <message>
        <source>spread: standard error of measured lengths; else 2</source>
        <translation>spread：实测长度的标准误；未给出时为 2</translation>
    </message>
    <message>
        <source>spread: of inferred ones; else 10</source>
        <translation>spread：推断长度的标准误；未给出时为 10</translation>
    </message>
    <message>
        <source>spread: minimum zygapophyseal overlap, a share; else 0.25,0.5</source>
        <translation>spread：关节突最小重叠，为份额；未给出时为 0.25,0.5</translation>
    </message>
    <message>
        <source>spread: cartilage, %; else 0,4.56</source>
        <translation>spread：软骨，%；未给出时为 0,4.56</translation>
    </message>
    <message>
        <source>spread: the project's assumptions in every sample</source>
        <translation>spread：每次抽样都用项目的假设</translation>
    </message>
    <message>
        <source>pressure: height of the heart in the chest, 0 ribs' ends, 1 column; else 0.333</source>
        <translation>pressure：心脏在胸腔中的高度，0 为肋骨末端，1 为脊柱；未给出时为 0.333</translation>
    </message>
    <message>
        <source>stress: where the tension runs, a share of the neural spine's height; else 1</source>
        <translation>stress：拉力走行的位置，占神经棘高度的份额；否则为 1</translation>
    </message>
    <message>
        <source>elevation: head height and neck slope in neutral, at the ends of the range and now.
envelope: feeding envelope, what the snout reaches inside the ranges: side outline, space, strip on the ground.
range: where each joint of the column ends. spread: uncertainty (Monte Carlo), how far the answer moves with
measurement error and assumptions, 5, 50 and 95 %. pressure: the column of blood from heart to head and
what the heart has to give, an assumption-laden figure. stress: how hard each joint of the neck is pressed,
posture by posture, and how even that is, with what speaks against the method. Heights are over the ground; the
trunk stays as it stands. Bones that collide end ranges too.
</source>
        <translation>elevation：中性位、活动范围两端与当前的头高和颈部坡度。
envelope：取食范围，即在活动范围内吻端可及之处：侧面轮廓、空间、地面上的条带。
range：脊柱每个关节的限度所在。spread：不确定性（蒙特卡罗），即答案随测量误差与假设变动多少，5、50 和 95 %。
pressure：从心脏到头部的血柱，以及心脏须提供的压力，这一数值依赖许多假设。
stress：颈部每个关节在各姿态中受压多大、是否均匀，以及对该方法的批评。
高度自地面起算；躯干保持原状。相撞的骨骼同样限定活动范围。
</translation>
    </message>
    <message>
        <source>  neck %1, trunk %2, sacrum %3, tail %4: a column of %5</source>
        <translation>  颈 %1，躯干 %2，荐椎 %3，尾 %4：脊柱共 %5</translation>
    </message>
    <message>
        <source>skull %1, neck %2, trunk %3, sacrum %4, tail %5</source>
        <translation>头骨 %1，颈 %2，躯干 %3，荐椎 %4，尾 %5</translation>
    </message>
    <message>
        <source>%1 from snout to tail tip along the column, %2 without the skull</source>
        <translation>沿脊柱自吻端至尾端 %1，不含头骨 %2</translation>
    </message>
    <message>
        <source>femur %1, humerus to femur %2</source>
        <translation>股骨 %1，肱骨与股骨之比 %2</translation>
    </message>
    <message>
        <source>print</source>
        <translation>足迹</translation>
    </message>
    <message>
        <source>pace angulation</source>
        <translation>步角</translation>
    </message>
    <message>
        <source>gauge</source>
        <translation>轨距</translation>
    </message>
    <message>
        <source>relative stride</source>
        <translation>相对复步长</translation>
    </message>
    <message>
        <source>speed</source>
        <translation>速度</translation>
    </message>
    <message>
        <source>hip height = %1 x length of the hind print: %2</source>
        <translation>髋高 = %1 × 后足迹长度：%2</translation>
    </message>
    <message>
        <source>speed = 0.25 g^0.5 stride^1.67 hip^-1.17: %1</source>
        <translation>速度 = 0.25 g^0.5 复步长^1.67 髋高^-1.17：%1</translation>
    </message>
    <message>
        <source>a multiple</source>
        <translation>倍数</translation>
    </message>
    <message>
        <source>hip height, pace angulation, gauge and speed from a table of footprints</source>
        <translation>由足迹表得出髋高、步角、行迹宽与速度</translation>
    </message>
    <message>
        <source>hip height over print length; 4 when absent</source>
        <translation>髋高与足迹长之比；未给出时为 4</translation>
    </message>
    <message>
        <source>Columns foot,pace_cm,next_pace_cm,stride_cm,length_cm and any of width_cm, gauge_cm, ahead_cm; a blank cell is
unknown, and so is what follows from it. foot is a name such as LP1 or 'right fore'. Published multipliers: 4
(Alexander 1976), 4.586 (derived titanosaurs, Gonzalez Riga 2011).
</source>
        <translation>列 foot,pace_cm,next_pace_cm,stride_cm,length_cm，以及 width_cm, gauge_cm, ahead_cm 中的任意列；
空白单元格为未知，由它得出的数值也未知。foot 是 LP1 或 'right fore' 之类的名称。
已发表的倍数：4（Alexander 1976）、4.586（衍生泰坦巨龙类，Gonzalez Riga 2011）。
</translation>
    </message>
    <message>
        <source>warning: %1</source>
        <translation>警告：%1</translation>
    </message>
    <message>
        <source>wrote %1</source>
        <translation>已写入 %1</translation>
    </message>
    <message>
        <source>Add pose “%1”</source>
        <translation>添加姿态“%1”</translation>
    </message>
    <message>
        <source>Rename pose to “%1”</source>
        <translation>将姿态改名为“%1”</translation>
    </message>
    <message>
        <source>Delete pose “%1”</source>
        <translation>删除姿态“%1”</translation>
    </message>
    <message>
        <source>Update pose “%1”</source>
        <translation>更新姿态“%1”</translation>
    </message>
    <message>
        <source>Keep the limits of neck and tail</source>
        <translation>保存颈部与尾部的极限</translation>
    </message>
    <message>
        <source>Unlock %1</source>
        <translation>解锁 %1</translation>
    </message>
    <message>
        <source>Lock %1</source>
        <translation>锁定 %1</translation>
    </message>
    <message>
        <source>Unlock all joints</source>
        <translation>解锁全部关节</translation>
    </message>
    <message>
        <source>Add claim “%1”</source>
        <translation>添加论断“%1”</translation>
    </message>
    <message>
        <source>Claim “%1”</source>
        <translation>论断“%1”</translation>
    </message>
    <message>
        <source>Remove claim “%1”</source>
        <translation>移除论断“%1”</translation>
    </message>
    <message>
        <source>Pin a note to %1</source>
        <translation>在 %1 上钉注释</translation>
    </message>
    <message>
        <source>Delete note %1</source>
        <translation>删除注释 %1</translation>
    </message>
    <message>
        <source>About Zygapose</source>
        <translation>关于 Zygapose</translation>
    </message>
    <message>
        <source>Zygapose %1</source>
        <translation>Zygapose %1</translation>
    </message>
    <message>
        <source>Poses a sauropod skeleton and says, joint by joint, whether its bones support the pose.</source>
        <translation>摆放蜥脚类骨架的姿态，并逐个关节说明骨骼是否支持该姿态。</translation>
    </message>
    <message>
        <source>Bare bones give a range; cartilage, muscle and skin made it narrower or wider, and nobody has measured them. A supported pose is possible, not proven; the sample animals are invented.

For mounts and models that carry weight or stand over people this is not an engineering document; local codes and licensed practice decide.</source>
        <translation>裸骨给出一个范围；软骨、肌肉和皮肤使它变窄或变宽，而无人测量过。受支持的姿态只是可能，并未证实；样本动物均为虚构。

对于承重或立于人上方的装架与模型，本程序并非工程文件；以当地规范和持证从业者的意见为准。</translation>
    </message>
    <message>
        <source>New animal from scans</source>
        <translation>由扫描新建动物</translation>
    </message>
    <message>
        <source>Bones scanned in one common frame</source>
        <translation>在同一坐标系中扫描的骨骼</translation>
    </message>
    <message>
        <source>Folder with a mesh file for each bone</source>
        <translation>每块骨骼一个网格文件的文件夹</translation>
    </message>
    <message>
        <source>Choose…</source>
        <translation>选择…</translation>
    </message>
    <message>
        <source>Folder</source>
        <translation>文件夹</translation>
    </message>
    <message>
        <source>Body plan</source>
        <translation>体型方案</translation>
    </message>
    <message>
        <source>Make the animal</source>
        <translation>生成动物</translation>
    </message>
    <message>
        <source>Folder of bone scans</source>
        <translation>骨骼扫描的文件夹</translation>
    </message>
    <message>
        <source>Head, limbs and what has not been scanned are sculpted after the scans' sizes.</source>
        <translation>头、四肢和未扫描的部分按扫描的尺寸塑造。</translation>
    </message>
    <message>
        <source>The column alone, with as many vertebrae as the files' names say; what has not been scanned is sculpted after the scans' sizes.</source>
        <translation>仅有脊柱，椎骨数目依文件名而定；未扫描的部分按扫描的尺寸塑造。</translation>
    </message>
    <message>
        <source>Landmarks and facets are suggested where neighbours lie in articulation.</source>
        <translation>在相邻骨骼处于关节连接之处建议标志点和关节面。</translation>
    </message>
    <message>
        <source>There is no mesh file in this folder.</source>
        <translation>此文件夹中没有网格文件。</translation>
    </message>
    <message>
        <source>There is no such folder.</source>
        <translation>没有这个文件夹。</translation>
    </message>
    <message>
        <source>Mesh files in the folder: %1.</source>
        <translation>文件夹中的网格文件：%1。</translation>
    </message>
    <message>
        <source>Making an animal of scans</source>
        <translation>正在由扫描生成动物</translation>
    </message>
    <message>
        <source>Look at the marks</source>
        <translation>查看标记</translation>
    </message>
    <message>
        <source>Show all</source>
        <translation>全部显示</translation>
    </message>
    <message>
        <source>Bones of %1 in the animal: %2. Joints with suggested marks: %3; they come from shape alone: look at each and accept it, or mark it anew. Files and parts left out: %4.</source>
        <translation>%1 中的骨骼已放入动物：%2。带有建议标记的关节：%3；它们仅来自形状：请逐一查看并接受，或重新标记。未采用的文件和部件：%4。</translation>
    </message>
    <message>
        <source>What was found on the scans</source>
        <translation>在扫描上找到的内容</translation>
    </message>
    <message>
        <source>Stopped by %1</source>
        <translation>受 %1 限制</translation>
    </message>
    <message>
        <source>Show the pose</source>
        <translation>显示该姿态</translation>
    </message>
    <message>
        <source>Testing…</source>
        <translation>正在检验……</translation>
    </message>
    <message>
        <source>Could not be tested: %1.</source>
        <translation>无法检验：%1。</translation>
    </message>
    <message>
        <source>Probability: being worked out…</source>
        <translation>概率：正在计算……</translation>
    </message>
    <message>
        <source>Show the nearest pose</source>
        <translation>显示最接近的姿态</translation>
    </message>
    <message>
        <source>of length</source>
        <translation>按长度</translation>
    </message>
    <message>
        <source>of area</source>
        <translation>按面积</translation>
    </message>
    <message>
        <source>Overlap by</source>
        <translation>重叠的量法</translation>
    </message>
    <message>
        <source>The published rule counts the facet's length (Stevens &amp; Parrish 1999); area is the stricter reading at the same share</source>
        <translation>已发表的规则按关节面的长度计（Stevens &amp; Parrish 1999）；同一份额下，按面积是更严格的解读</translation>
    </message>
    <message>
        <source>Overlap by length or area</source>
        <translation>重叠按长度或按面积</translation>
    </message>
    <message>
        <source>Zygapophyseal overlap</source>
        <translation>关节面重叠</translation>
    </message>
    <message>
        <source>Minimum</source>
        <translation>最小</translation>
    </message>
    <message>
        <source>Share of the facet that must stay covered</source>
        <translation>关节面必须保持被覆盖的份额</translation>
    </message>
    <message>
        <source>Minimum overlap</source>
        <translation>最小重叠</translation>
    </message>
    <message>
        <source>Minimum overlap %1</source>
        <translation>最小重叠 %1</translation>
    </message>
    <message>
        <source>Cartilage</source>
        <translation>软骨</translation>
    </message>
    <message>
        <source>Cartilage of the neck</source>
        <translation>颈部的软骨</translation>
    </message>
    <message>
        <source>Cartilage of the trunk</source>
        <translation>躯干的软骨</translation>
    </message>
    <message>
        <source>Cartilage of the tail</source>
        <translation>尾部的软骨</translation>
    </message>
    <message>
        <source>Thickness between the centra</source>
        <translation>椎体之间的厚度</translation>
    </message>
    <message>
        <source>Published values…</source>
        <translation>已发表的数值……</translation>
    </message>
    <message>
        <source>Published cartilage values</source>
        <translation>已发表的软骨数值</translation>
    </message>
    <message>
        <source>Thickness found or argued for in other animals, each with its source</source>
        <translation>在其他动物中发现或论证的厚度，各附出处</translation>
    </message>
    <message>
        <source>Neck, trunk and tail</source>
        <translation>颈部、躯干和尾部</translation>
    </message>
    <message>
        <source>Grown sauropod</source>
        <translation>成年蜥脚类</translation>
    </message>
    <message>
        <source>Young sauropod</source>
        <translation>幼年蜥脚类</translation>
    </message>
    <message>
        <source>Measured in necks only; taken for trunk and tail as well: program default, no source</source>
        <translation>仅在颈部测得；躯干和尾部亦取此值：程序默认值，无来源</translation>
    </message>
    <message>
        <source>Neck, as in grown animals</source>
        <translation>颈部，按成年动物</translation>
    </message>
    <message>
        <source>Neck, as in young animals</source>
        <translation>颈部，按幼年动物</translation>
    </message>
    <message>
        <source>Neck, as in an animal of unknown age</source>
        <translation>颈部，按年龄不明的动物</translation>
    </message>
    <message>
        <source>None of them is the right value for another animal</source>
        <translation>对另一种动物而言，其中没有一个是正确的数值</translation>
    </message>
    <message>
        <source>Tolerated</source>
        <translation>容许</translation>
    </message>
    <message>
        <source>Facet contact</source>
        <translation>关节面嵌入</translation>
    </message>
    <message>
        <source>Share of the facet's length by which facets may interpenetrate. Program default, no source</source>
        <translation>关节面可相互嵌入其长度的份额。程序默认值，无出处</translation>
    </message>
    <message>
        <source>Tolerated facet interpenetration</source>
        <translation>容许的关节面嵌入</translation>
    </message>
    <message>
        <source>Facet gap</source>
        <translation>关节面间隙</translation>
    </message>
    <message>
        <source>Share of the facet's length by which facets may separate. Program default, no source</source>
        <translation>关节面可分离其长度的份额。程序默认值，无出处</translation>
    </message>
    <message>
        <source>Tolerated facet gap</source>
        <translation>容许的关节面间隙</translation>
    </message>
    <message>
        <source>Settling</source>
        <translation>沉降</translation>
    </message>
    <message>
        <source>Share of the cartilage's thickness by which bones shift so that their facets fit best when they turn. Program default, no source</source>
        <translation>骨骼转动时为使关节面最吻合而移动的距离，占软骨厚度的份额。程序默认值，无出处</translation>
    </message>
    <message>
        <source>Settling within the cartilage</source>
        <translation>软骨内的沉降</translation>
    </message>
    <message>
        <source>Near limit</source>
        <translation>接近极限</translation>
    </message>
    <message>
        <source>How close to a limit counts as near, as a share of the range. Program default, no source</source>
        <translation>离极限多近算作接近，以活动范围的份额计。程序默认值，无出处</translation>
    </message>
    <message>
        <source>Near-limit margin</source>
        <translation>接近极限的余量</translation>
    </message>
    <message>
        <source>Tolerated bone interpenetration</source>
        <translation>容许的骨骼嵌入</translation>
    </message>
    <message>
        <source>Percent of the smaller bone's mean extent, or millimetres</source>
        <translation>较小骨骼平均尺寸的百分比，或毫米</translation>
    </message>
    <message>
        <source>Bone contact</source>
        <translation>骨骼嵌入</translation>
    </message>
    <message>
        <source>Depth by which bones may interpenetrate away from their joint. Program default, no source</source>
        <translation>骨骼在关节以外可相互嵌入的深度。程序默认值，无出处</translation>
    </message>
    <message>
        <source>Judge scans against inferred neighbours</source>
        <translation>扫描可对照推断的邻骨判定</translation>
    </message>
    <message>
        <source>A joint between a marked scan and a bone whose facets are inferred is not assessed until both are marked; this assesses it against the inferred facets, and says so at the joint</source>
        <translation>标记过的扫描与关节面为推断的骨骼之间的关节，在两者都标记之前不评估；勾选后对照推断的关节面评估，并在该关节注明</translation>
    </message>
    <message>
        <source>Scans beside inferred bones</source>
        <translation>扫描与推断的骨骼相邻</translation>
    </message>
    <message>
        <source>Neutral articulation</source>
        <translation>中性关节位</translation>
    </message>
    <message>
        <source>Definition of neutral</source>
        <translation>中性位的定义</translation>
    </message>
    <message>
        <source>What stays when neutral moves</source>
        <translation>中性位改变时什么保持不变</translation>
    </message>
    <message>
        <source>When an assumption moves the neutral articulation, either the deflections stay and the bones turn, or the bones stay in space and the deflections are recomputed</source>
        <translation>某项假设移动中性关节位时，或者偏角不变而骨骼转动，或者骨骼在空间中不动而重新计算偏角</translation>
    </message>
    <message>
        <source>when it moves, deflections stay</source>
        <translation>移动时偏角不变</translation>
    </message>
    <message>
        <source>when it moves, bones stay in space</source>
        <translation>移动时骨骼在空间中不动</translation>
    </message>
    <message>
        <source>Slope of a vertebra</source>
        <translation>椎骨的倾角</translation>
    </message>
    <message>
        <source>What the slope of a vertebra is measured by</source>
        <translation>椎骨倾角的量取依据</translation>
    </message>
    <message>
        <source>From now on the bones stay in space when neutral moves; their deflections are recomputed</source>
        <translation>从现在起中性位移动时骨骼在空间中不动，偏角重新计算</translation>
    </message>
    <message>
        <source>From now on the deflections stay when neutral moves; the bones turn</source>
        <translation>从现在起中性位移动时偏角不变，骨骼转动</translation>
    </message>
    <message>
        <source>%1: %2 · %3 · Esc puts it back</source>
        <translation>%1：%2 · %3 · 按 Esc 放回原处</translation>
    </message>
    <message>
        <source>Unsaved work cannot be kept in %1. Save often.</source>
        <translation>未保存的工作无法存放在 %1。请经常保存。</translation>
    </message>
    <message>
        <source>Unsaved work could not be kept for recovery: %1. Save often.</source>
        <translation>未保存的工作无法留存以供恢复：%1。请经常保存。</translation>
    </message>
    <message>
        <source>Draw on the ground</source>
        <translation>画在地面上</translation>
    </message>
    <message>
        <source>The centre of mass, its plumb line, and the polygon of what touches the ground</source>
        <translation>质心、其铅垂线，以及接触地面部分的多边形</translation>
    </message>
    <message>
        <source>Mass and balance, an estimate</source>
        <translation>质量与平衡，估算</translation>
    </message>
    <message>
        <source>Not an engineering document: a mount needs an engineer's own reckoning.</source>
        <translation>并非工程文件：装架需要工程师自行核算。</translation>
    </message>
    <message>
        <source>Hulls around the bones × 1.21 (or the part's own factor) × density; %1</source>
        <translation>骨骼凸包 × 1.21（或该部分自己的系数）× 密度；%1</translation>
    </message>
    <message>
        <source>From humerus and femur, %1; %2</source>
        <translation>由肱骨和股骨，%1；%2</translation>
    </message>
    <message>
        <source>By volume</source>
        <translation>按体积</translation>
    </message>
    <message>
        <source>By circumference</source>
        <translation>按周长</translation>
    </message>
    <message>
        <source>Centre of mass</source>
        <translation>质心</translation>
    </message>
    <message>
        <source>On the fore feet</source>
        <translation>前足承担</translation>
    </message>
    <message>
        <source>Open an animal to weigh it.</source>
        <translation>打开一只动物以称重。</translation>
    </message>
    <message>
        <source>%1 of the weight</source>
        <translation>体重的 %1</translation>
    </message>
    <message>
        <source>not told by mechanics alone</source>
        <translation>仅凭力学无法得知</translation>
    </message>
    <message>
        <source>Source</source>
        <translation>出处</translation>
    </message>
    <message>
        <source>How this bone is known</source>
        <translation>这块骨骼如何得知</translation>
    </message>
    <message>
        <source>Where that is written, or whose choice it is</source>
        <translation>记载于何处，或由谁选定</translation>
    </message>
    <message>
        <source>Incomplete scan: %1.</source>
        <translation>不完整的扫描：%1。</translation>
    </message>
    <message>
        <source>Evidence of %1</source>
        <translation>%1 的证据</translation>
    </message>
    <message>
        <source>Source of %1</source>
        <translation>%1 的出处</translation>
    </message>
    <message>
        <source>%1
Incomplete scan: %2.</source>
        <translation>%1
不完整的扫描：%2。</translation>
    </message>
    <message>
        <source>Bone</source>
        <translation>骨骼</translation>
    </message>
    <message>
        <source>Choose a bone to see its measures</source>
        <translation>选择一块骨骼以查看其量度</translation>
    </message>
    <message>
        <source>Measurement table</source>
        <translation>测量表</translation>
    </message>
    <message>
        <source>Find a bone</source>
        <translation>查找骨骼</translation>
    </message>
    <message>
        <source>Bones by region</source>
        <translation>按部位列出的骨骼</translation>
    </message>
    <message>
        <source>Measures of the chosen bone</source>
        <translation>所选骨骼的量度</translation>
    </message>
    <message>
        <source>%1 of %2 bones preserved (%3); counting mirrored counterparts %4 (%5)</source>
        <translation>%2 块骨骼中已保存 %1 块（%3）；计入镜像对应者为 %4 块（%5）</translation>
    </message>
    <message>
        <source>%1, fused to %2</source>
        <translation>%1，与 %2 愈合</translation>
    </message>
    <message>
        <source>Import bone scans</source>
        <translation>导入骨骼扫描</translation>
    </message>
    <message>
        <source>Which bones are these?</source>
        <translation>这些是哪些骨骼？</translation>
    </message>
    <message>
        <source>Bone, unit and upward axis are guesses from name and size: set right what is wrong. Each bone takes the place of the sculpted one; your files stay as they are.</source>
        <translation>骨骼、单位与向上的轴由名称和大小猜测：请改正有误之处。每块骨骼取代塑形的骨骼；您的文件保持不变。</translation>
    </message>
    <message>
        <source>File</source>
        <translation>文件</translation>
    </message>
    <message>
        <source>Unit</source>
        <translation>单位</translation>
    </message>
    <message>
        <source>Upward</source>
        <translation>向上</translation>
    </message>
    <message>
        <source>Result</source>
        <translation>结果</translation>
    </message>
    <message>
        <source>Files to import</source>
        <translation>要导入的文件</translation>
    </message>
    <message>
        <source>Files read</source>
        <translation>已读取的文件</translation>
    </message>
    <message>
        <source>Add to skeleton</source>
        <translation>加入骨架</translation>
    </message>
    <message>
        <source>Add files…</source>
        <translation>添加文件……</translation>
    </message>
    <message>
        <source>Landmarks from a table…</source>
        <translation>从表格读取标志点……</translation>
    </message>
    <message>
        <source>Remove</source>
        <translation>移除</translation>
    </message>
    <message>
        <source>Takes the chosen files out of the list, also while they are being read  (Del)</source>
        <translation>将所选文件移出列表，读取期间也可以  (Del)</translation>
    </message>
    <message>
        <source>&amp;Keep the animal's size</source>
        <translation>保持动物的尺寸(&amp;K)</translation>
    </message>
    <message>
        <source>The bones are added with the size they have; the animal stays as it is</source>
        <translation>骨骼按自身的尺寸加入；动物保持不变</translation>
    </message>
    <message>
        <source>&amp;Fit the animal to these bones</source>
        <translation>让动物与这些骨骼相配(&amp;F)</translation>
    </message>
    <message>
        <source>The bones keep their size and what is measured on them; every other length of the animal is scaled</source>
        <translation>骨骼保持自身的尺寸和在其上量得的值；动物的其他所有长度随之缩放</translation>
    </message>
    <message>
        <source>Another &amp;unit:</source>
        <translation>另一个单位(&amp;U)：</translation>
    </message>
    <message>
        <source>All files of the list are in the unit that you choose</source>
        <translation>列表中的所有文件都采用所选的单位</translation>
    </message>
    <message>
        <source>Unit of all files</source>
        <translation>所有文件的单位</translation>
    </message>
    <message>
        <source>Bone in %1</source>
        <translation>%1 中的骨骼</translation>
    </message>
    <message>
        <source>Unit of %1</source>
        <translation>%1 的单位</translation>
    </message>
    <message>
        <source>Upward axis of %1</source>
        <translation>%1 的向上轴</translation>
    </message>
    <message>
        <source>Z</source>
        <translation>Z</translation>
    </message>
    <message>
        <source>Y</source>
        <translation>Y</translation>
    </message>
    <message>
        <source>Which is right?</source>
        <translation>哪一个正确？</translation>
    </message>
    <message>
        <source>Its name does not tell which bone it is: choose one.</source>
        <translation>从名称看不出是哪块骨骼：请选择一块。</translation>
    </message>
    <message>
        <source>%1 is chosen for the same bone.</source>
        <translation>%1 选的是同一块骨骼。</translation>
    </message>
    <message>
        <source>Waiting to be read</source>
        <translation>等待读取</translation>
    </message>
    <message>
        <source>Reading, %1</source>
        <translation>正在读取，%1</translation>
    </message>
    <message>
        <source>Left out: %1</source>
        <translation>已略去：%1</translation>
    </message>
    <message>
        <source>the unit is not sure</source>
        <translation>单位不确定</translation>
    </message>
    <message>
        <source>takes the place of the scan that is there</source>
        <translation>取代已有的扫描</translation>
    </message>
    <message>
        <source>landmarks from the table: %1</source>
        <translation>来自表格的标志点：%1</translation>
    </message>
    <message>
        <source>Drop mesh files here, or add them: PLY, OBJ, STL, glTF, COLLADA and others.</source>
        <translation>将网格文件拖到此处，或添加它们：PLY、OBJ、STL、glTF、COLLADA 等。</translation>
    </message>
    <message>
        <source>Read %1 of %2. Cancel stops it, and nothing has changed.</source>
        <translation>已读取 %1 / %2。“取消”即停止，且没有任何改变。</translation>
    </message>
    <message>
        <source>Say which size is right; then they can be added.</source>
        <translation>请说明哪一个尺寸正确；然后即可加入。</translation>
    </message>
    <message>
        <source>%1 of %2 can be added to the skeleton; the others are left out.</source>
        <translation>%2 块中有 %1 块可加入骨架；其余略去。</translation>
    </message>
    <message>
        <source>It can be added to the skeleton.</source>
        <translation>它可以加入骨架。</translation>
    </message>
    <message>
        <source>All %1 can be added to the skeleton.</source>
        <translation>全部 %1 块都可以加入骨架。</translation>
    </message>
    <message>
        <source>The animal becomes %1 times as large as it is.</source>
        <translation>动物将变为现在的 %1 倍大。</translation>
    </message>
    <message>
        <source>Percent of the centrum's functional length, or millimetres</source>
        <translation>椎体功能长度的百分比，或毫米</translation>
    </message>
    <message>
        <source>%</source>
        <translation>%</translation>
    </message>
    <message>
        <source>mm</source>
        <translation>毫米</translation>
    </message>
    <message>
        <source>%1: unit</source>
        <translation>%1：单位</translation>
    </message>
    <message>
        <source>%1 could not be tested: %2.</source>
        <translation>%1 无法检验：%2。</translation>
    </message>
    <message>
        <source>What is claimed</source>
        <translation>论断内容</translation>
    </message>
    <message>
        <source>Lower or upper bound</source>
        <translation>下限或上限</translation>
    </message>
    <message>
        <source>Value of the claim</source>
        <translation>论断的数值</translation>
    </message>
    <message>
        <source>Distance ahead of the forefeet</source>
        <translation>前足之前的距离</translation>
    </message>
    <message>
        <source>Source of the claim</source>
        <translation>论断的出处</translation>
    </message>
    <message>
        <source>Who claims it</source>
        <translation>由谁提出</translation>
    </message>
    <message>
        <source>Bound</source>
        <translation>界限</translation>
    </message>
    <message>
        <source>Claim</source>
        <translation>论断</translation>
    </message>
    <message>
        <source>Value</source>
        <translation>数值</translation>
    </message>
    <message>
        <source>&amp;Claims</source>
        <translation>论断(&amp;C)</translation>
    </message>
    <message>
        <source>&amp;Add a claim</source>
        <translation>添加论断(&amp;A)</translation>
    </message>
    <message>
        <source>&amp;Show the pose of the chosen claim</source>
        <translation>显示所选论断的姿态(&amp;S)</translation>
    </message>
    <message>
        <source>testing</source>
        <translation>正在检验</translation>
    </message>
    <message>
        <source>failed</source>
        <translation>失败</translation>
    </message>
    <message>
        <source>Add a claim</source>
        <translation>添加论断</translation>
    </message>
    <message>
        <source>Remove the chosen claim</source>
        <translation>移除所选论断</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>停止</translation>
    </message>
    <message>
        <source>Stop testing; the next change tests again</source>
        <translation>停止检验；下次更改时再检验</translation>
    </message>
    <message>
        <source>A claim says what the animal could do, such as “minimum head height 8.50 m”. It is tested whether that is within the ranges of the joints, in which pose, which joints stop it, and which overlap or cartilage it would take, and how probable it is.</source>
        <translation>论断说的是动物能做什么，例如“最低头高 8.50 m”。程序检验它是否在各关节的活动范围内、以何种姿态、受哪些关节限制、需要怎样的重叠或软骨，以及概率有多大。</translation>
    </message>
    <message>
        <source>Show “%1”</source>
        <translation>显示“%1”</translation>
    </message>
    <message>
        <source>Show the nearest to “%1”</source>
        <translation>显示最接近“%1”的姿态</translation>
    </message>
    <message>
        <source>stopped</source>
        <translation>已停止</translation>
    </message>
    <message>
        <source>testing, %1</source>
        <translation>正在检验，%1</translation>
    </message>
    <message>
        <source>Test again</source>
        <translation>再次检验</translation>
    </message>
    <message>
        <source>claims: %1</source>
        <translation>论断：%1</translation>
    </message>
    <message>
        <source>Reading</source>
        <translation>读数</translation>
    </message>
    <message>
        <source>Now</source>
        <translation>现在</translation>
    </message>
    <message>
        <source>Other</source>
        <translation>另一</translation>
    </message>
    <message>
        <source>Difference</source>
        <translation>差值</translation>
    </message>
    <message>
        <source>Joint</source>
        <translation>关节</translation>
    </message>
    <message>
        <source>Up</source>
        <translation>上</translation>
    </message>
    <message>
        <source>Left</source>
        <translation>左</translation>
    </message>
    <message>
        <source>Torsion</source>
        <translation>扭转</translation>
    </message>
    <message>
        <source>Verdict, now → other</source>
        <translation>判定，现在 → 另一</translation>
    </message>
    <message>
        <source>Compare</source>
        <translation>比较</translation>
    </message>
    <message>
        <source>What the present pose is compared with</source>
        <translation>当前姿态与之比较的对象</translation>
    </message>
    <message>
        <source>The present pose against</source>
        <translation>当前姿态对比</translation>
    </message>
    <message>
        <source>Joints that differ: degrees of the other less the present</source>
        <translation>有差异的关节：另一姿态减当前姿态的度数</translation>
    </message>
    <message>
        <source>Pose “%1”</source>
        <translation>姿态“%1”</translation>
    </message>
    <message>
        <source>The same pose under the usual assumptions</source>
        <translation>通常假设下的同一姿态</translation>
    </message>
    <message>
        <source>No joint differs in angle or verdict.</source>
        <translation>没有关节在角度或判定上不同。</translation>
    </message>
    <message>
        <source>Contact between bones cannot be judged: %1. Facets are judged without it.</source>
        <translation>无法判定骨骼之间的接触：%1。关节面照常判定。</translation>
    </message>
    <message>
        <source>Densities</source>
        <translation>密度</translation>
    </message>
    <message>
        <source>Usual values</source>
        <translation>通常数值</translation>
    </message>
    <message>
        <source>800 kg/m³ for the trunk (used with hulls by Sellers et al. 2012), less for the neck's air spaces, 1000 for limbs: program default, no source. Flesh outside the hull of the bones: 1.21 times its volume, of whole bodies (Sellers et al. 2012)</source>
        <translation>躯干 800 kg/m³（Sellers et al. 2012 与凸包一起使用），颈部因气腔而较小，四肢 1000：程序默认值，无出处。骨骼凸包之外的软组织：体积为凸包的 1.21 倍，按整个身体得出（Sellers et al. 2012）</translation>
    </message>
    <message>
        <source>Usual densities</source>
        <translation>通常密度</translation>
    </message>
    <message>
        <source>Volume over the hull of the bones</source>
        <translation>体积与骨骼凸包之比</translation>
    </message>
    <message>
        <source>kg/m³</source>
        <translation>kg/m³</translation>
    </message>
    <message>
        <source>Density of the %1</source>
        <translation>%1的密度</translation>
    </message>
    <message>
        <source>May be off by %1 either way; program default, no source</source>
        <translation>可能上下偏差 %1；程序默认值，无出处</translation>
    </message>
    <message>
        <source>× hull</source>
        <translation>× 凸包</translation>
    </message>
    <message>
        <source>Volume of the %1 over the hull of its bones</source>
        <translation>%1的体积与其骨骼凸包之比</translation>
    </message>
    <message>
        <source>Living volume over that of the hull around the bones; may be off by %1 either way; program default, no source</source>
        <translation>活体体积与骨骼凸包体积之比；可能上下偏差 %1；程序默认值，无出处</translation>
    </message>
    <message>
        <source>Flesh of the %1</source>
        <translation>%1的软组织</translation>
    </message>
    <message>
        <source>thickness of the body guide</source>
        <translation>体形参考的厚度</translation>
    </message>
    <message>
        <source>Remove the scan of %1</source>
        <translation>移除 %1 的扫描</translation>
    </message>
    <message>
        <source>Mirror %1 to %2</source>
        <translation>将 %1 镜像到 %2</translation>
    </message>
    <message>
        <source>Scale %1 to %2 %</source>
        <translation>将 %1 缩放到 %2 %</translation>
    </message>
    <message>
        <source>%1, bones kept in space</source>
        <translation>%1，骨骼在空间中不动</translation>
    </message>
    <message>
        <source>%1, deflections kept</source>
        <translation>%1，偏角不变</translation>
    </message>
    <message>
        <source>One mesh per bone, named by bone</source>
        <translation>每块骨骼一个网格，以骨骼命名</translation>
    </message>
    <message>
        <source>All bones joined into one mesh</source>
        <translation>全部骨骼合为一个网格</translation>
    </message>
    <message>
        <source>One closed surface, to sculpt on</source>
        <translation>一个封闭曲面，供雕塑之用</translation>
    </message>
    <message>
        <source>Fill the joints where cartilage was</source>
        <translation>在原有软骨处填充关节</translation>
    </message>
    <message>
        <source>Add a body guide</source>
        <translation>添加体形参考</translation>
    </message>
    <message>
        <source>Export meshes</source>
        <translation>导出网格</translation>
    </message>
    <message>
        <source>Choose a file…</source>
        <translation>选择文件……</translation>
    </message>
    <message>
        <source>The skeleton is written as it is posed now, in full detail.</source>
        <translation>骨架按当前姿态以全部细节写出。</translation>
    </message>
    <message>
        <source>centimetres</source>
        <translation>厘米</translation>
    </message>
    <message>
        <source>Z up</source>
        <translation>Z 轴向上</translation>
    </message>
    <message>
        <source>Y up</source>
        <translation>Y 轴向上</translation>
    </message>
    <message>
        <source>Format</source>
        <translation>格式</translation>
    </message>
    <message>
        <source>Upward axis</source>
        <translation>向上的轴</translation>
    </message>
    <message>
        <source>Smaller keeps thinner parts and takes longer; from %1 mm on it fits in memory</source>
        <translation>越小则保留越薄的部分，但用时更长；从 %1 毫米起可放入内存</translation>
    </message>
    <message>
        <source>Voxel</source>
        <translation>体素</translation>
    </message>
    <message>
        <source>Triangles, about</source>
        <translation>三角形，约</translation>
    </message>
    <message>
        <source>A smooth envelope so thick around the bones of each region. It follows the pose. It is a guide, not anatomy, and its mesh is named so.</source>
        <translation>按各部位的厚度围绕骨骼的平滑包络。它随姿态变化。它是参考，不是解剖结构，其网格也如此命名。</translation>
    </message>
    <message>
        <source>glTF is always in metres with Y up; its nodes follow the joints.</source>
        <translation>glTF 始终以米为单位、Y 轴向上；其节点与关节一致。</translation>
    </message>
    <message>
        <source>The file itself does not say its unit: choose what the other program expects.</source>
        <translation>文件本身不说明单位：请选择另一程序所期望的单位。</translation>
    </message>
    <message>
        <source>cm</source>
        <translation>厘米</translation>
    </message>
    <message>
        <source>about %1 triangles</source>
        <translation>约 %1 个三角形</translation>
    </message>
    <message>
        <source>%1 triangles in %2 bones</source>
        <translation>%2 块骨骼中 %1 个三角形</translation>
    </message>
    <message>
        <source>Size in the file: %1 %4 long, %2 %4 wide, %3 %4 high; %5.</source>
        <translation>文件中的尺寸：长 %1 %4，宽 %2 %4，高 %3 %4；%5。</translation>
    </message>
    <message>
        <source>Facets of the joint, to scale</source>
        <translation>该关节的关节面，按比例</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>未知</translation>
    </message>
    <message>
        <source>cranial ↑</source>
        <translation>颅侧 ↑</translation>
    </message>
    <message>
        <source>New from a measurement table</source>
        <translation>由测量表新建</translation>
    </message>
    <message>
        <source>Measurement tables (*.csv)</source>
        <translation>测量表 (*.csv)</translation>
    </message>
    <message>
        <source>All files (*)</source>
        <translation>所有文件 (*)</translation>
    </message>
    <message>
        <source>Open</source>
        <translation>打开</translation>
    </message>
    <message>
        <source>Zygapose projects and tables (*.zyga *.zygazip *.csv)</source>
        <translation>Zygapose 项目与测量表 (*.zyga *.zygazip *.csv)</translation>
    </message>
    <message>
        <source>%1 was opened; remarks on the table: %2.</source>
        <translation>%1 已打开；对该表的备注：%2 条。</translation>
    </message>
    <message>
        <source>Show</source>
        <translation>显示</translation>
    </message>
    <message>
        <source>Save as</source>
        <translation>另存为</translation>
    </message>
    <message>
        <source>Zygapose project, scans in a folder beside it (*.zyga)</source>
        <translation>Zygapose 项目，扫描在旁边的文件夹中 (*.zyga)</translation>
    </message>
    <message>
        <source>Zygapose project as one file, scans inside (*.zygazip)</source>
        <translation>Zygapose 单文件项目，扫描在其中 (*.zygazip)</translation>
    </message>
    <message>
        <source>Save as…</source>
        <translation>另存为……</translation>
    </message>
    <message>
        <source>Saved as %1</source>
        <translation>已保存为 %1</translation>
    </message>
    <message>
        <source>Unsaved work</source>
        <translation>未保存的工作</translation>
    </message>
    <message>
        <source>“%1” has changes that no file holds.</source>
        <translation>“%1”有尚未存入任何文件的更改。</translation>
    </message>
    <message>
        <source>Save them first, or give them up.</source>
        <translation>请先保存，或放弃它们。</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>保存</translation>
    </message>
    <message>
        <source>Give them up</source>
        <translation>放弃更改</translation>
    </message>
    <message>
        <source>Go back</source>
        <translation>返回</translation>
    </message>
    <message>
        <source>%1 is open in another window too. Of two savings the later one stays; save this one under another name to keep both.</source>
        <translation>%1 也在另一个窗口中打开。两次保存中后一次生效；请将此处另存为其他名称以保留两者。</translation>
    </message>
    <message>
        <source>%1 was moved or deleted. What is open here is still whole: save it to write the file anew.</source>
        <translation>%1 已被移走或删除。此处打开的内容仍然完整：保存即可重新写出文件。</translation>
    </message>
    <message>
        <source>%1 was changed by another program or window. This window still shows what it had read.</source>
        <translation>%1 已被另一个程序或窗口更改。此窗口仍显示先前读入的内容。</translation>
    </message>
    <message>
        <source>Read it anew</source>
        <translation>重新读取</translation>
    </message>
    <message>
        <source>Changed elsewhere</source>
        <translation>已在别处更改</translation>
    </message>
    <message>
        <source>“%1” was changed by another program or window since it was opened here.</source>
        <translation>自在此打开以来，“%1”已被另一个程序或窗口更改。</translation>
    </message>
    <message>
        <source>Saving here replaces what was written there. Another name keeps both.</source>
        <translation>在此保存会替换那里写入的内容。另取名称可保留两者。</translation>
    </message>
    <message>
        <source>Replace it</source>
        <translation>替换</translation>
    </message>
    <message>
        <source>All joints</source>
        <translation>全部关节</translation>
    </message>
    <message>
        <source>Every joint is within its range as it is posed.</source>
        <translation>在这个姿态下，每个关节都在活动范围内。</translation>
    </message>
    <message>
        <source>Also list the joints that are within range or not assessed</source>
        <translation>也列出在活动范围内或未评估的关节</translation>
    </message>
    <message>
        <source>Findings, worst first</source>
        <translation>判定结果，最差者在前</translation>
    </message>
    <message>
        <source>assuming %1</source>
        <translation>假设：%1</translation>
    </message>
    <message>
        <source>Drag a bone of the neck: the neck bends from its root, and the bones' ranges hold it. Ctrl+Z takes it back.</source>
        <translation>拖动颈部的一块骨骼：颈部从根部起弯曲，并受骨骼活动范围的约束。Ctrl+Z 可撤销。</translation>
    </message>
    <message>
        <source>The strip below shows the whole column. Its band is what the bones support, its dot is where the joint is now; drag the dot.</source>
        <translation>下方的长条显示整个脊柱。带是骨骼所支持的范围，点是关节现在的位置；请拖动该点。</translation>
    </message>
    <message>
        <source>The verdict is at the lower right. Findings on the right side say which joint is beyond its range, and why.</source>
        <translation>总判定在右下角。右侧的判定结果说明哪个关节超出范围以及原因。</translation>
    </message>
    <message>
        <source>The right mouse button turns the view, the wheel magnifies. F1 lists all keys and gestures.</source>
        <translation>鼠标右键转动视图，滚轮缩放。F1 列出全部按键与手势。</translation>
    </message>
    <message>
        <source>First steps</source>
        <translation>入门步骤</translation>
    </message>
    <message>
        <source>Send the first steps away; the settings bring them back</source>
        <translation>收起入门步骤；可在设置中再次显示</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>完成</translation>
    </message>
    <message>
        <source>Ground</source>
        <translation>地面</translation>
    </message>
    <message>
        <source>% of bone</source>
        <translation>占骨宽的 %</translation>
    </message>
    <message>
        <source>% of usual</source>
        <translation>% 通常值</translation>
    </message>
    <message>
        <source>My own</source>
        <translation>自定</translation>
    </message>
    <message>
        <source>Build</source>
        <translation>体格</translation>
    </message>
    <message>
        <source>Tail width</source>
        <translation>尾宽</translation>
    </message>
    <message>
        <source>Tail height</source>
        <translation>尾高</translation>
    </message>
    <message>
        <source>Limb muscles</source>
        <translation>四肢肌肉</translation>
    </message>
    <message>
        <source>Tail presets: %1. The other values are a choice, not a finding.</source>
        <translation>尾部预设：%1。其他数值是一种选择，不是发现。</translation>
    </message>
    <message>
        <source>How joints are judged</source>
        <translation>关节如何判定</translation>
    </message>
    <message>
        <source>Search</source>
        <translation>搜索</translation>
    </message>
    <message>
        <source>Search the help</source>
        <translation>搜索帮助</translation>
    </message>
    <message>
        <source>Pages of the help</source>
        <translation>帮助页面列表</translation>
    </message>
    <message>
        <source>Help page</source>
        <translation>帮助页面</translation>
    </message>
    <message>
        <source>Joint view</source>
        <translation>关节视图</translation>
    </message>
    <message>
        <source>Choose a joint on the animal or on the strip</source>
        <translation>在动物或长条上选择一个关节</translation>
    </message>
    <message>
        <source>Put this joint back to neutral</source>
        <translation>将此关节放回中性位</translation>
    </message>
    <message>
        <source>± 5° a joint</source>
        <translation>每关节 ± 5°</translation>
    </message>
    <message>
        <source>Axial rotation follows the facets</source>
        <translation>轴向旋转随关节面</translation>
    </message>
    <message>
        <source>Bending sideways over facets that stand forward of the joint turns the bone about its long axis as well. Switched off, the axial rotation stays as typed.</source>
        <translation>关节面位于关节前方时，侧屈会使骨骼同时绕长轴转动。关闭后，轴向旋转保持所输入的值。</translation>
    </message>
    <message>
        <source>Neutral: %1</source>
        <translation>中性关节位：%1</translation>
    </message>
    <message>
        <source>Neutral: %1 (facet centres %2 apart)</source>
        <translation>中性关节位：%1（关节面中心相距 %2）</translation>
    </message>
    <message>
        <source>Turn %1</source>
        <translation>转动 %1</translation>
    </message>
    <message>
        <source>Let the axial rotation of %1 follow its facets</source>
        <translation>让 %1 的轴向旋转随其关节面</translation>
    </message>
    <message>
        <source>Hold the axial rotation of %1</source>
        <translation>固定 %1 的轴向旋转</translation>
    </message>
    <message>
        <source>%1 to neutral</source>
        <translation>%1 回到中性</translation>
    </message>
    <message>
        <source>Bend the neck, the tail or a limb</source>
        <translation>弯曲颈部、尾部或肢体</translation>
    </message>
    <message>
        <source>drag a bone</source>
        <translation>拖动骨骼</translation>
    </message>
    <message>
        <source>Bend to the side</source>
        <translation>向侧面弯曲</translation>
    </message>
    <message>
        <source>Shift while dragging a bone</source>
        <translation>拖动骨骼时按住 Shift</translation>
    </message>
    <message>
        <source>Twist</source>
        <translation>扭转</translation>
    </message>
    <message>
        <source>Ctrl or Alt while dragging a bone</source>
        <translation>拖动骨骼时按住 Ctrl 或 Alt</translation>
    </message>
    <message>
        <source>Move a foot</source>
        <translation>移动一只脚</translation>
    </message>
    <message>
        <source>drag it; with Shift straight up and down</source>
        <translation>拖动它；按 Shift 则垂直上下</translation>
    </message>
    <message>
        <source>Lift or plant a foot</source>
        <translation>抬起或放下一只脚</translation>
    </message>
    <message>
        <source>right click on it</source>
        <translation>在脚上点按右键</translation>
    </message>
    <message>
        <source>Move the trunk over planted feet</source>
        <translation>在落地的脚上方移动躯干</translation>
    </message>
    <message>
        <source>drag the pelvis; with Shift it tilts</source>
        <translation>拖动骨盆；按 Shift 则倾斜</translation>
    </message>
    <message>
        <source>Raise or lower the chest</source>
        <translation>升高或降低胸部</translation>
    </message>
    <message>
        <source>drag a rib</source>
        <translation>拖动肋骨</translation>
    </message>
    <message>
        <source>Choose a bone and its joint</source>
        <translation>选择骨骼及其关节</translation>
    </message>
    <message>
        <source>click</source>
        <translation>点按</translation>
    </message>
    <message>
        <source>Bend only from this joint on</source>
        <translation>只从此关节起弯曲</translation>
    </message>
    <message>
        <source>double-click</source>
        <translation>双击</translation>
    </message>
    <message>
        <source>Turn the view</source>
        <translation>转动视图</translation>
    </message>
    <message>
        <source>drag with the right button, or beside the animal</source>
        <translation>用右键拖动，或在动物旁边拖动</translation>
    </message>
    <message>
        <source>Move the view</source>
        <translation>移动视图</translation>
    </message>
    <message>
        <source>drag with the middle button, or Shift and the right button</source>
        <translation>用中键拖动，或按 Shift 用右键拖动</translation>
    </message>
    <message>
        <source>Magnify</source>
        <translation>缩放</translation>
    </message>
    <message>
        <source>wheel, + and −</source>
        <translation>滚轮、+ 与 −</translation>
    </message>
    <message>
        <source>Turn the chosen joint</source>
        <translation>转动所选关节</translation>
    </message>
    <message>
        <source>arrow keys, with Ctrl to twist; with Shift in larger steps</source>
        <translation>方向键，按 Ctrl 则扭转；按 Shift 则步幅更大</translation>
    </message>
    <message>
        <source>Take a drag back</source>
        <translation>撤回拖动</translation>
    </message>
    <message>
        <source>Esc while dragging</source>
        <translation>拖动时按 Esc</translation>
    </message>
    <message>
        <source>Bend one joint</source>
        <translation>弯曲一个关节</translation>
    </message>
    <message>
        <source>drag its mark up or down</source>
        <translation>上下拖动其标记</translation>
    </message>
    <message>
        <source>Choose a span of joints</source>
        <translation>选择一段关节</translation>
    </message>
    <message>
        <source>drag sideways</source>
        <translation>横向拖动</translation>
    </message>
    <message>
        <source>Bend the whole span</source>
        <translation>弯曲整段</translation>
    </message>
    <message>
        <source>drag any mark in it</source>
        <translation>拖动其中任一标记</translation>
    </message>
    <message>
        <source>Go along the column, turn the joint</source>
        <translation>沿脊柱移动，转动关节</translation>
    </message>
    <message>
        <source>arrow keys</source>
        <translation>方向键</translation>
    </message>
    <message>
        <source>Turn the chosen joint on its map</source>
        <translation>在图上转动所选关节</translation>
    </message>
    <message>
        <source>drag the mark, or arrow keys; with Shift in larger steps</source>
        <translation>拖动标记，或用方向键；按 Shift 则步幅更大</translation>
    </message>
    <message>
        <source>Try an assumption</source>
        <translation>试用一项假设</translation>
    </message>
    <message>
        <source>drag its slider; letting go keeps it</source>
        <translation>拖动其滑块；松开即保留</translation>
    </message>
    <message>
        <source>Keys and gestures</source>
        <translation>按键与手势</translation>
    </message>
    <message>
        <source>On the animal</source>
        <translation>在动物上</translation>
    </message>
    <message>
        <source>On the range strip</source>
        <translation>在活动范围条上</translation>
    </message>
    <message>
        <source>In the panels</source>
        <translation>在面板中</translation>
    </message>
    <message>
        <source>Keys</source>
        <translation>按键</translation>
    </message>
    <message>
        <source>Straighten</source>
        <translation>矫正</translation>
    </message>
    <message>
        <source>Undoes what bent the bone after death, going by its paired marks; the original is kept</source>
        <translation>按成对标记消除骨骼死后的弯曲；保留原件</translation>
    </message>
    <message>
        <source>Puts what the marks measure into the table, so that bones around this one that were not found follow it</source>
        <translation>把标记所量得的数值写入测量表，使周围未发现的骨骼随之调整</translation>
    </message>
    <message>
        <source>Nothing to measure yet: mark both rims, or both ends</source>
        <translation>尚无可量之处：请标出前后两缘，或两端</translation>
    </message>
    <message>
        <source>Enter all in the table</source>
        <translation>全部写入测量表</translation>
    </message>
    <message>
        <source>Measures of %1 into the table</source>
        <translation>%1 的量度写入测量表</translation>
    </message>
    <message>
        <source>%1 %2 (table: blank)</source>
        <translation>%1 %2（表中：空白）</translation>
    </message>
    <message>
        <source>%1 %2 (table: %3)</source>
        <translation>%1 %2（表中：%3）</translation>
    </message>
    <message>
        <source>%1 %2 (table: %3, inferred)</source>
        <translation>%1 %2（表中：%3，推断）</translation>
    </message>
    <message>
        <source>%1 of %2 into the table</source>
        <translation>%2 的%1写入测量表</translation>
    </message>
    <message>
        <source>Advised: %1</source>
        <translation>建议：%1</translation>
    </message>
    <message>
        <source>Advised: leave it as it was found; %1</source>
        <translation>建议：保持发现时的样子；%1</translation>
    </message>
    <message>
        <source>Undo shear of %1</source>
        <translation>消除 %1 的剪切</translation>
    </message>
    <message>
        <source>Undo compression of %1</source>
        <translation>消除 %1 的压缩</translation>
    </message>
    <message>
        <source>%1 (pairs off by %2, then %3)</source>
        <translation>%1（成对偏差先为 %2，后为 %3）</translation>
    </message>
    <message>
        <source>As it was found</source>
        <translation>恢复为发现时的样子</translation>
    </message>
    <message>
        <source>Export landmarks</source>
        <translation>导出标志点</translation>
    </message>
    <message>
        <source>Import landmarks</source>
        <translation>导入标志点</translation>
    </message>
    <message>
        <source>Landmark tables (*.csv)</source>
        <translation>标志点表 (*.csv)</translation>
    </message>
    <message>
        <source>%1 has no landmark of a bone that was imported.</source>
        <translation>%1 中没有已导入骨骼的标志点。</translation>
    </message>
    <message>
        <source>Landmarks from %1</source>
        <translation>来自 %1 的标志点</translation>
    </message>
    <message>
        <source>Landmarks</source>
        <translation>标志点</translation>
    </message>
    <message>
        <source>Bone to be marked</source>
        <translation>要标记的骨骼</translation>
    </message>
    <message>
        <source>Next bone (N)</source>
        <translation>下一块骨骼（N）</translation>
    </message>
    <message>
        <source>Previous bone (P)</source>
        <translation>上一块骨骼（P）</translation>
    </message>
    <message>
        <source>Left lateral</source>
        <translation>左侧视</translation>
    </message>
    <message>
        <source>Right lateral</source>
        <translation>右侧视</translation>
    </message>
    <message>
        <source>Dorsal</source>
        <translation>背侧</translation>
    </message>
    <message>
        <source>Cranial</source>
        <translation>颅侧</translation>
    </message>
    <message>
        <source>Caudal</source>
        <translation>尾侧</translation>
    </message>
    <message>
        <source>Show bone</source>
        <translation>显示骨骼</translation>
    </message>
    <message>
        <source>Redo</source>
        <translation>重做</translation>
    </message>
    <message>
        <source>Undo</source>
        <translation>撤销</translation>
    </message>
    <message>
        <source>What the keys do here (?)</source>
        <translation>此处各键的作用（?）</translation>
    </message>
    <message>
        <source>Marks of this bone</source>
        <translation>此骨骼的标记</translation>
    </message>
    <message>
        <source>Mark</source>
        <translation>标记</translation>
    </message>
    <message>
        <source>State</source>
        <translation>状态</translation>
    </message>
    <message>
        <source>What its joints still need</source>
        <translation>其关节还需要什么</translation>
    </message>
    <message>
        <source>Show it</source>
        <translation>显示它</translation>
    </message>
    <message>
        <source>Goes to the next mark that is in doubt and shows it large (D)</source>
        <translation>转到下一个存疑标记并放大显示（D）</translation>
    </message>
    <message>
        <source>Radius of the brush</source>
        <translation>刷子的半径</translation>
    </message>
    <message>
        <source>Outline of the facet</source>
        <translation>关节面的轮廓</translation>
    </message>
    <message>
        <source>ellipse</source>
        <translation>椭圆</translation>
    </message>
    <message>
        <source>as brushed</source>
        <translation>按所刷</translation>
    </message>
    <message>
        <source>Brush</source>
        <translation>刷</translation>
    </message>
    <message>
        <source>Accept</source>
        <translation>接受</translation>
    </message>
    <message>
        <source>Takes the suggested mark for made and goes on to the next (%1)</source>
        <translation>将建议的标记视为已完成，并转到下一个（%1）</translation>
    </message>
    <message>
        <source>Accept all of this bone</source>
        <translation>接受此骨的全部标记</translation>
    </message>
    <message>
        <source>Remove mark</source>
        <translation>移除标记</translation>
    </message>
    <message>
        <source>Mirror this one</source>
        <translation>镜像此项</translation>
    </message>
    <message>
        <source>Mirror all</source>
        <translation>全部镜像</translation>
    </message>
    <message>
        <source>Makes the missing partner of every mark, across the mid-plane of the bone</source>
        <translation>跨骨骼的中矢面补出每个标记缺少的对应者</translation>
    </message>
    <message>
        <source>Import landmarks…</source>
        <translation>导入标志点……</translation>
    </message>
    <message>
        <source>Export landmarks…</source>
        <translation>导出标志点……</translation>
    </message>
    <message>
        <source>%1: %2 open</source>
        <translation>%1：%2 个未做</translation>
    </message>
    <message>
        <source>%1: %2 suggested</source>
        <translation>%1：%2 个建议</translation>
    </message>
    <message>
        <source>%1: %2 open, %3 suggested</source>
        <translation>%1：%2 个未做，%3 个建议</translation>
    </message>
    <message>
        <source>Landmarks: %1</source>
        <translation>标志点：%1</translation>
    </message>
    <message>
        <source>Preparing the bone</source>
        <translation>正在准备骨骼</translation>
    </message>
    <message>
        <source>required</source>
        <translation>必需</translation>
    </message>
    <message>
        <source>optional</source>
        <translation>可选</translation>
    </message>
    <message>
        <source>in doubt</source>
        <translation>存疑</translation>
    </message>
    <message>
        <source>One mark can hardly be right.</source>
        <translation>有一个标记几乎不可能正确。</translation>
    </message>
    <message>
        <source>%1 marks can hardly be right.</source>
        <translation>有 %1 个标记几乎不可能正确。</translation>
    </message>
    <message>
        <source>Every required mark is made.</source>
        <translation>必需标记均已做。</translation>
    </message>
    <message>
        <source>Required and open: %1; suggested, to be looked at: %2.</source>
        <translation>必需而未做：%1；建议待查看：%2。</translation>
    </message>
    <message>
        <source>The bone lies by a guess: its landmarks do not suffice yet.</source>
        <translation>骨骼按猜测放置：其标志点尚不足。</translation>
    </message>
    <message>
        <source>Accept the suggested mark</source>
        <translation>接受建议的标记</translation>
    </message>
    <message>
        <source>Next mark</source>
        <translation>下一个标记</translation>
    </message>
    <message>
        <source>Previous mark</source>
        <translation>上一个标记</translation>
    </message>
    <message>
        <source>Remove the mark</source>
        <translation>移除标记</translation>
    </message>
    <message>
        <source>Take the last place back</source>
        <translation>收回最后一处</translation>
    </message>
    <message>
        <source>Mirror this mark</source>
        <translation>镜像此标记</translation>
    </message>
    <message>
        <source>Mirror all marks</source>
        <translation>镜像全部标记</translation>
    </message>
    <message>
        <source>Show the next mark in doubt</source>
        <translation>显示下一个存疑标记</translation>
    </message>
    <message>
        <source>Next bone</source>
        <translation>下一块骨骼</translation>
    </message>
    <message>
        <source>Previous bone</source>
        <translation>上一块骨骼</translation>
    </message>
    <message>
        <source>Next bone with open or suggested marks</source>
        <translation>下一块有未做或建议标记的骨骼</translation>
    </message>
    <message>
        <source>Turn the bone upright</source>
        <translation>将骨骼摆正</translation>
    </message>
    <message>
        <source>Show the whole bone</source>
        <translation>显示整块骨骼</translation>
    </message>
    <message>
        <source>Larger brush</source>
        <translation>刷子加大</translation>
    </message>
    <message>
        <source>Smaller brush</source>
        <translation>刷子减小</translation>
    </message>
    <message>
        <source>These keys</source>
        <translation>这些按键</translation>
    </message>
    <message>
        <source>Help on marks</source>
        <translation>关于标记的帮助</translation>
    </message>
    <message>
        <source>Turn the view; so do the other arrows</source>
        <translation>转动视图；其他方向键亦同</translation>
    </message>
    <message>
        <source>Magnify; minus goes back</source>
        <translation>放大；减号缩回</translation>
    </message>
    <message>
        <source>Mark what lies under the middle of the view</source>
        <translation>标记视图正中之处</translation>
    </message>
    <message>
        <source>Only this bone has marks that are open or suggested.</source>
        <translation>只有这块骨骼有未做或建议的标记。</translation>
    </message>
    <message>
        <source>No bone has marks that are open or suggested.</source>
        <translation>没有骨骼有未做或建议的标记。</translation>
    </message>
    <message>
        <source>Upright by its marks.</source>
        <translation>已按标记摆正。</translation>
    </message>
    <message>
        <source>Upright by the marks there are and its shape.</source>
        <translation>已按现有标记与形状摆正。</translation>
    </message>
    <message>
        <source>Upright by its shape alone, which does not tell up from down: U again turns it over.</source>
        <translation>仅按形状摆正，形状分不出上下：再按 U 可翻转。</translation>
    </message>
    <message>
        <source>suggested by the program, %1 sure: accept it, or mark it anew</source>
        <translation>由程序建议，把握 %1：请接受，或重新标记</translation>
    </message>
    <message>
        <source>%1 × %2, residual %3</source>
        <translation>%1 × %2，残差 %3</translation>
    </message>
    <message>
        <source>%1 × %2, mirrored, not measured</source>
        <translation>%1 × %2，镜像，未测量</translation>
    </message>
    <message>
        <source>radius %1, residual %2</source>
        <translation>半径 %1，残差 %2</translation>
    </message>
    <message>
        <source>marked</source>
        <translation>已标记</translation>
    </message>
    <message>
        <source>suggested, %1</source>
        <translation>建议，%1</translation>
    </message>
    <message>
        <source>The centre is only known to %1: brush more of the curve.</source>
        <translation>中心只知道到 %1：请多刷一些曲面。</translation>
    </message>
    <message>
        <source>Centre known to %1; the surface is concave.</source>
        <translation>中心的误差为 %1；表面为凹面。</translation>
    </message>
    <message>
        <source>Centre known to %1; the surface is convex.</source>
        <translation>中心的误差为 %1；表面为凸面。</translation>
    </message>
    <message>
        <source>%1 of what was brushed does not lie in the facet's plane and was left out.</source>
        <translation>所刷部分有 %1 不在关节面的平面内，已略去。</translation>
    </message>
    <message>
        <source>Mark the %1 of %2</source>
        <translation>标记 %2 的%1</translation>
    </message>
    <message>
        <source>Remove the %1 of %2</source>
        <translation>移除 %2 的%1</translation>
    </message>
    <message>
        <source>Accept the %1 of %2</source>
        <translation>接受 %2 的%1</translation>
    </message>
    <message>
        <source>Accept the marks of %1</source>
        <translation>接受 %1 的标记</translation>
    </message>
    <message>
        <source>Every mark of one side has its partner already.</source>
        <translation>一侧的每个标记都已有对应者。</translation>
    </message>
    <message>
        <source>Mirror the marks of %1</source>
        <translation>镜像 %1 的标记</translation>
    </message>
    <message>
        <source>Mirrored across the mid-plane: %1.</source>
        <translation>已跨中矢面镜像：%1。</translation>
    </message>
    <message>
        <source>There is nothing here that could be mirrored: mark one side of a pair first.</source>
        <translation>此处没有可镜像的内容：请先标记成对标记中的一侧。</translation>
    </message>
    <message>
        <source>Mirror the %1 of %2</source>
        <translation>镜像 %2 的%1</translation>
    </message>
    <message>
        <source>Bone with its landmarks</source>
        <translation>带标志点的骨骼</translation>
    </message>
    <message>
        <source>Arrow keys turn it, plus and minus magnify, Return marks what lies under the middle.</source>
        <translation>方向键转动，加号与减号缩放，回车键标记中央之下的位置。</translation>
    </message>
    <message>
        <source>This display offers no OpenGL 3.3. A newer graphics driver, or Mesa's software one, is needed.</source>
        <translation>此显示器不提供 OpenGL 3.3。需要更新的显卡驱动程序，或 Mesa 的软件实现。</translation>
    </message>
    <message>
        <source>The graphics driver refused a shader: %1</source>
        <translation>图形驱动程序拒绝了一个着色器：%1</translation>
    </message>
    <message>
        <source>Lengths along the column, from snout to tail tip; the head's height is that of the snout over the ground</source>
        <translation>沿脊柱从吻端到尾端的长度；头高为吻端离地的高度</translation>
    </message>
    <message>
        <source>neck %1 · trunk %2 · tail %3 · column %4 m</source>
        <translation>颈 %1 · 躯干 %2 · 尾 %3 · 脊柱 %4 m</translation>
    </message>
    <message>
        <source>neck %1 · trunk %2 · tail %3 · total %4 · head at %5 m</source>
        <translation>颈 %1 · 躯干 %2 · 尾 %3 · 全长 %4 · 头高 %5 米</translation>
    </message>
    <message>
        <source>%1, slider</source>
        <translation>%1，滑块</translation>
    </message>
    <message>
        <source>Poses</source>
        <translation>姿态</translation>
    </message>
    <message>
        <source>Range strip</source>
        <translation>活动范围条</translation>
    </message>
    <message>
        <source>The graphics driver was reset. The picture was started anew; your work was not touched.</source>
        <translation>图形驱动程序已重置。画面已重新启动；您的工作未受影响。</translation>
    </message>
    <message>
        <source>Open a project or a measurement table, or drop one here.</source>
        <translation>打开一个项目或测量表，或将其拖到此处。</translation>
    </message>
    <message>
        <source>d MMM hh:mm</source>
        <translation>M月d日 hh:mm</translation>
    </message>
    <message>
        <source>Work from %1 on “%2” was not saved.</source>
        <translation>%1 在“%2”上的工作未曾保存。</translation>
    </message>
    <message>
        <source>Recover</source>
        <translation>恢复</translation>
    </message>
    <message>
        <source>Discard</source>
        <translation>丢弃</translation>
    </message>
    <message>
        <source>Zygapose</source>
        <translation>Zygapose</translation>
    </message>
    <message>
        <source>%1[*] — Zygapose</source>
        <translation>%1[*] — Zygapose</translation>
    </message>
    <message>
        <source>&amp;File</source>
        <translation>文件(&amp;F)</translation>
    </message>
    <message>
        <source>&amp;New from a table…</source>
        <translation>由测量表新建(&amp;N)……</translation>
    </message>
    <message>
        <source>New from s&amp;cans…</source>
        <translation>由扫描新建(&amp;C)…</translation>
    </message>
    <message>
        <source>&amp;Open…</source>
        <translation>打开(&amp;O)……</translation>
    </message>
    <message>
        <source>Open &amp;recent</source>
        <translation>打开最近的文件(&amp;R)</translation>
    </message>
    <message>
        <source>Open a sa&amp;mple</source>
        <translation>打开样本(&amp;M)</translation>
    </message>
    <message>
        <source>&amp;Save</source>
        <translation>保存(&amp;S)</translation>
    </message>
    <message>
        <source>Save &amp;as…</source>
        <translation>另存为(&amp;A)……</translation>
    </message>
    <message>
        <source>&amp;Export meshes…</source>
        <translation>导出网格(&amp;E)……</translation>
    </message>
    <message>
        <source>Save &amp;picture…</source>
        <translation>保存图片(&amp;P)……</translation>
    </message>
    <message>
        <source>S&amp;heet…</source>
        <translation>图版(&amp;H)……</translation>
    </message>
    <message>
        <source>&amp;Report…</source>
        <translation>报告(&amp;R)……</translation>
    </message>
    <message>
        <source>&amp;Quit</source>
        <translation>退出(&amp;Q)</translation>
    </message>
    <message>
        <source>&amp;Edit</source>
        <translation>编辑(&amp;E)</translation>
    </message>
    <message>
        <source>Undo:</source>
        <translation>撤销：</translation>
    </message>
    <message>
        <source>Redo:</source>
        <translation>重做：</translation>
    </message>
    <message>
        <source>&amp;Find a bone</source>
        <translation>查找骨骼(&amp;F)</translation>
    </message>
    <message>
        <source>&amp;Settings…</source>
        <translation>设置(&amp;S)……</translation>
    </message>
    <message>
        <source>&amp;Pose</source>
        <translation>姿态(&amp;P)</translation>
    </message>
    <message>
        <source>&amp;Mirror left and right</source>
        <translation>左右镜像(&amp;M)</translation>
    </message>
    <message>
        <source>Mirror left and right</source>
        <translation>左右镜像</translation>
    </message>
    <message>
        <source>&amp;Keep this pose under a name</source>
        <translation>以名称保存此姿态(&amp;K)</translation>
    </message>
    <message>
        <source>C&amp;ompare…</source>
        <translation>比较(&amp;O)……</translation>
    </message>
    <message>
        <source>&amp;Bones</source>
        <translation>骨骼(&amp;B)</translation>
    </message>
    <message>
        <source>&amp;View</source>
        <translation>视图(&amp;V)</translation>
    </message>
    <message>
        <source>From the &amp;left</source>
        <translation>从左侧(&amp;L)</translation>
    </message>
    <message>
        <source>From the &amp;right</source>
        <translation>从右侧(&amp;R)</translation>
    </message>
    <message>
        <source>&amp;Dorsal</source>
        <translation>背侧(&amp;D)</translation>
    </message>
    <message>
        <source>&amp;Cranial</source>
        <translation>颅侧(&amp;C)</translation>
    </message>
    <message>
        <source>Ca&amp;udal</source>
        <translation>尾侧(&amp;U)</translation>
    </message>
    <message>
        <source>&amp;Three-quarter</source>
        <translation>四分之三侧面(&amp;T)</translation>
    </message>
    <message>
        <source>&amp;Ventral</source>
        <translation>腹侧(&amp;V)</translation>
    </message>
    <message>
        <source>&amp;Perspective</source>
        <translation>透视(&amp;P)</translation>
    </message>
    <message>
        <source>Frame &amp;all</source>
        <translation>显示全部(&amp;A)</translation>
    </message>
    <message>
        <source>Frame the c&amp;hosen bone</source>
        <translation>显示所选骨骼(&amp;H)</translation>
    </message>
    <message>
        <source>Dar&amp;k</source>
        <translation>深色(&amp;K)</translation>
    </message>
    <message>
        <source>Pa&amp;nels</source>
        <translation>面板(&amp;N)</translation>
    </message>
    <message>
        <source>Go to the next panel</source>
        <translation>转到下一个面板</translation>
    </message>
    <message>
        <source>&amp;Help</source>
        <translation>帮助(&amp;H)</translation>
    </message>
    <message>
        <source>&amp;How joints are judged</source>
        <translation>关节如何判定(&amp;H)</translation>
    </message>
    <message>
        <source>&amp;Keys and gestures</source>
        <translation>按键与手势(&amp;K)</translation>
    </message>
    <message>
        <source>&amp;About Zygapose</source>
        <translation>关于 Zygapose(&amp;A)</translation>
    </message>
    <message>
        <source>Tools</source>
        <translation>工具</translation>
    </message>
    <message>
        <source>The bones are still being sculpted. Try again when they are on screen.</source>
        <translation>骨骼仍在塑形。待其显示后再试。</translation>
    </message>
    <message>
        <source>All measures</source>
        <translation>全部量度</translation>
    </message>
    <message>
        <source>Remarks</source>
        <translation>提示</translation>
    </message>
    <message>
        <source>Plain: measured. Dim: inferred; point at a cell to see by which rule. Type a number in mm or degrees to measure a cell, Delete to have it inferred again.</source>
        <translation>正常墨色：实测。浅色：推断；指向单元格可看到依据何种规则。键入以毫米或度计的数字即为实测，按 Delete 恢复为推断。</translation>
    </message>
    <message>
        <source>Vertebrae</source>
        <translation>椎骨数</translation>
    </message>
    <message>
        <source>Measured total, mm</source>
        <translation>实测总长，毫米</translation>
    </message>
    <message>
        <source>Of these without ribs</source>
        <translation>其后无肋者</translation>
    </message>
    <message>
        <source>Vertebrae: %1</source>
        <translation>椎骨数：%1</translation>
    </message>
    <message>
        <source>Measured total: %1</source>
        <translation>实测总长：%1</translation>
    </message>
    <message>
        <source>What is not measured is fitted to it</source>
        <translation>未实测的按它拟合</translation>
    </message>
    <message>
        <source>Part of the skeleton</source>
        <translation>骨架的部分</translation>
    </message>
    <message>
        <source>Also those that facets need not have, such as those of the postzygapophyses</source>
        <translation>也包括关节面不必有的量度，例如后关节突的量度</translation>
    </message>
    <message>
        <source>Open a table…</source>
        <translation>打开表格…</translation>
    </message>
    <message>
        <source>Save the table…</source>
        <translation>保存表格…</translation>
    </message>
    <message>
        <source>Save a blank table…</source>
        <translation>保存空白表…</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>关闭</translation>
    </message>
    <message>
        <source>Takes a CSV file in the place of this table; scans, poses and notes stay</source>
        <translation>用一个 CSV 文件代替此表；扫描、姿态与注记保留</translation>
    </message>
    <message>
        <source>Writes what is measured as a CSV file</source>
        <translation>将实测的内容写成 CSV 文件</translation>
    </message>
    <message>
        <source>Writes a CSV file with all bones of this plan and these counts, to be filled in</source>
        <translation>写出含此方案与椎骨数的全部骨骼的 CSV 文件，供填写</translation>
    </message>
    <message>
        <source>All bones</source>
        <translation>全部骨骼</translation>
    </message>
    <message>
        <source>Go to the cell</source>
        <translation>到该单元格</translation>
    </message>
    <message>
        <source>No measured cell is hard to believe</source>
        <translation>没有难以置信的实测单元格</translation>
    </message>
    <message>
        <source>One measured cell is hard to believe</source>
        <translation>有一个实测单元格难以置信</translation>
    </message>
    <message numerus="yes">
        <source>%n measured cells are hard to believe</source>
        <translation>
            <numerusform>有 %n 个实测单元格难以置信</numerusform>
        </translation>
    </message>
    <message>
        <source>Body plan: %1</source>
        <translation>体型方案：%1</translation>
    </message>
    <message>
        <source>%1: %2 vertebrae</source>
        <translation>%1：%2 节椎骨</translation>
    </message>
    <message>
        <source>not measured, and not needed</source>
        <translation>未测量，亦不需要</translation>
    </message>
    <message>
        <source>%1: blank</source>
        <translation>%1：留空</translation>
    </message>
    <message numerus="yes">
        <source>%n cells blank</source>
        <translation>
            <numerusform>%n 个单元格留空</numerusform>
        </translation>
    </message>
    <message>
        <source>Paste measures</source>
        <translation>粘贴量度</translation>
    </message>
    <message>
        <source>(°)</source>
        <translation>（°）</translation>
    </message>
    <message>
        <source>(mm)</source>
        <translation>（mm）</translation>
    </message>
    <message>
        <source>Measure</source>
        <translation>量度</translation>
    </message>
    <message>
        <source>Origin</source>
        <translation>来源</translation>
    </message>
    <message>
        <source>Facet gap, mm</source>
        <translation>关节面间隙，毫米</translation>
    </message>
    <message>
        <source>Gap between centra, mm</source>
        <translation>椎体间隙，毫米</translation>
    </message>
    <message>
        <source>minimum %1 by area</source>
        <translation>最小 %1（按面积）</translation>
    </message>
    <message>
        <source>minimum %1 by length</source>
        <translation>最小 %1（按长度）</translation>
    </message>
    <message>
        <source>Overlap by length</source>
        <translation>按长度重叠</translation>
    </message>
    <message>
        <source>Overlap by area</source>
        <translation>按面积重叠</translation>
    </message>
    <message>
        <source>Close this message</source>
        <translation>关闭此消息</translation>
    </message>
    <message>
        <source>Show and bend this motion of every joint (%1)</source>
        <translation>显示并弯曲每个关节的这一运动（%1）</translation>
    </message>
    <message>
        <source>Motion shown by the range strip</source>
        <translation>活动范围条显示的运动</translation>
    </message>
    <message>
        <source>Notes</source>
        <translation>注释</translation>
    </message>
    <message>
        <source>Pin a &amp;note here</source>
        <translation>在此钉注释(&amp;N)</translation>
    </message>
    <message>
        <source>Pin a &amp;note to the chosen bone</source>
        <translation>在所选骨骼上钉注释(&amp;N)</translation>
    </message>
    <message>
        <source>Nothing is pinned. Click a bone with the right button and choose “Pin a note here”.</source>
        <translation>尚未钉任何注释。请在骨骼上点按右键并选择“在此钉注释”。</translation>
    </message>
    <message>
        <source>Delete the note</source>
        <translation>删除该注释</translation>
    </message>
    <message>
        <source>Words of the note</source>
        <translation>注释的文字</translation>
    </message>
    <message>
        <source>What is to be seen here</source>
        <translation>此处可见的内容</translation>
    </message>
    <message>
        <source>What the note rests on</source>
        <translation>注释的依据</translation>
    </message>
    <message>
        <source>Source of the note</source>
        <translation>注释的出处</translation>
    </message>
    <message>
        <source>Change what note %1 rests on</source>
        <translation>更改注释 %1 的依据</translation>
    </message>
    <message>
        <source>Change the source of note %1</source>
        <translation>更改注释 %1 的出处</translation>
    </message>
    <message>
        <source>Write note %1</source>
        <translation>书写注释 %1</translation>
    </message>
    <message>
        <source>%1 (the animal has no such bone)</source>
        <translation>%1（该动物没有这块骨骼）</translation>
    </message>
    <message numerus="yes">
        <source>%n pinned</source>
        <translation>
            <numerusform>已钉 %n 条</numerusform>
        </translation>
    </message>
    <message>
        <source>Exporting %1</source>
        <translation>正在导出 %1</translation>
    </message>
    <message>
        <source>%1 is written.</source>
        <translation>%1 已写出。</translation>
    </message>
    <message>
        <source>Show folder</source>
        <translation>显示文件夹</translation>
    </message>
    <message>
        <source>%1 was not written: %2</source>
        <translation>%1 未写出：%2</translation>
    </message>
    <message>
        <source>Depth: %1 m from white to black.</source>
        <translation>深度：从白到黑为 %1 米。</translation>
    </message>
    <message>
        <source>Depth: white is %1 m from the eye, black %2 m.</source>
        <translation>深度：白色距眼睛 %1 米，黑色 %2 米。</translation>
    </message>
    <message>
        <source>Save picture</source>
        <translation>保存图片</translation>
    </message>
    <message>
        <source>Some of the pictures are there already.</source>
        <translation>其中一些图片已经存在。</translation>
    </message>
    <message>
        <source>Replace them</source>
        <translation>替换它们</translation>
    </message>
    <message>
        <source>Another name…</source>
        <translation>另取名称……</translation>
    </message>
    <message>
        <source>Tracing %1</source>
        <translation>正在绘制 %1</translation>
    </message>
    <message>
        <source>Further files beside it: %1.</source>
        <translation>同处的其他文件：%1 个。</translation>
    </message>
    <message>
        <source>Fold</source>
        <translation>折叠</translation>
    </message>
    <message>
        <source>Close %1; the View menu brings it back</source>
        <translation>关闭%1；可从“视图”菜单重新打开</translation>
    </message>
    <message>
        <source>How this is judged (Shift+F1)</source>
        <translation>此处如何判定 (Shift+F1)</translation>
    </message>
    <message>
        <source>Unfold</source>
        <translation>展开</translation>
    </message>
    <message>
        <source>Finished picture</source>
        <translation>成品图片</translation>
    </message>
    <message>
        <source>Light, shadow and lines in one</source>
        <translation>光、影与线条合为一体</translation>
    </message>
    <message>
        <source>What is written</source>
        <translation>写出的内容</translation>
    </message>
    <message>
        <source>Each is a file of its own; all lie exactly over each other. They are traced beside the window; you can go on posing meanwhile.</source>
        <translation>每项各为一个文件，彼此完全重合。绘制在窗口之外进行；其间可继续摆放姿态。</translation>
    </message>
    <message>
        <source>Straight from above there is no eye height, so this picture stays parallel. Choose another side to look through a lens.</source>
        <translation>从正上方看没有视高，因此此图保持平行投影。若要透过镜头观看，请选择其他方向。</translation>
    </message>
    <message>
        <source>Angle, crop and projection are those of the view on screen.</source>
        <translation>角度、取景与投影均与屏幕上的视图相同。</translation>
    </message>
    <message>
        <source>The eye is %1 m from the middle of the animal.</source>
        <translation>眼睛距动物中部 %1 米。</translation>
    </message>
    <message>
        <source>The horizon is at row %1 of %2.</source>
        <translation>地平线位于第 %1 行（共 %2 行）。</translation>
    </message>
    <message>
        <source>The horizon is outside the picture.</source>
        <translation>地平线在画面之外。</translation>
    </message>
    <message>
        <source>Without perspective there is no horizon.</source>
        <translation>没有透视便没有地平线。</translation>
    </message>
    <message>
        <source>Choose the finished picture or at least one pass.</source>
        <translation>请选择成品图片或至少一个分层。</translation>
    </message>
    <message>
        <source>Part of the animal is outside the picture. A greater distance or a shorter lens shows more.</source>
        <translation>动物的一部分在画面之外。增大距离或缩短焦距可显示更多。</translation>
    </message>
    <message>
        <source>Part of the animal is outside the picture, as on screen. Move the view back to show more.</source>
        <translation>与屏幕上一样，动物的一部分在画面之外。将视图后移可显示更多。</translation>
    </message>
    <message>
        <source>%1 × %2 px</source>
        <translation>%1 × %2 像素</translation>
    </message>
    <message>
        <source>°</source>
        <translation>°</translation>
    </message>
    <message>
        <source>px</source>
        <translation>像素</translation>
    </message>
    <message>
        <source>As near as shows all</source>
        <translation>能显示全部的最近处</translation>
    </message>
    <message>
        <source>Draw the horizon</source>
        <translation>画出地平线</translation>
    </message>
    <message>
        <source>Transparent ground, shadow kept</source>
        <translation>透明地面，保留阴影</translation>
    </message>
    <message>
        <source>Metre grid on the ground</source>
        <translation>地面上的米制网格</translation>
    </message>
    <message>
        <source>As on screen</source>
        <translation>与屏幕相同</translation>
    </message>
    <message>
        <source>From the left</source>
        <translation>从左侧</translation>
    </message>
    <message>
        <source>From the right</source>
        <translation>从右侧</translation>
    </message>
    <message>
        <source>Ventral</source>
        <translation>腹侧</translation>
    </message>
    <message>
        <source>Three-quarter</source>
        <translation>四分之三侧面</translation>
    </message>
    <message>
        <source>Turned by hand</source>
        <translation>手动转动</translation>
    </message>
    <message>
        <source>Parallel</source>
        <translation>平行</translation>
    </message>
    <message>
        <source>Through a lens</source>
        <translation>透过镜头</translation>
    </message>
    <message>
        <source>View</source>
        <translation>视图</translation>
    </message>
    <message>
        <source>Projection</source>
        <translation>投影方式</translation>
    </message>
    <message>
        <source>For a picture 36 mm wide: 24 is wide, 50 as the eye sees, 135 narrow and flat</source>
        <translation>按画幅宽 36 毫米计：24 为广角，50 近于目视，135 窄而扁平</translation>
    </message>
    <message>
        <source>Over the ground; the camera is held level, so upright things stay upright</source>
        <translation>自地面起算；相机保持水平，竖直之物仍然竖直</translation>
    </message>
    <message>
        <source>0 looks from in front, 90 from the left, −90 from the right</source>
        <translation>0 自前方看，90 自左侧看，−90 自右侧看</translation>
    </message>
    <message>
        <source>Level, from the eye to the middle of the animal</source>
        <translation>水平距离，从眼睛到动物中部</translation>
    </message>
    <message>
        <source>Focal length</source>
        <translation>焦距</translation>
    </message>
    <message>
        <source>Eye height</source>
        <translation>视高</translation>
    </message>
    <message>
        <source>Turn</source>
        <translation>转角</translation>
    </message>
    <message>
        <source>Distance</source>
        <translation>距离</translation>
    </message>
    <message>
        <source>Horizon</source>
        <translation>地平线</translation>
    </message>
    <message>
        <source>Width</source>
        <translation>宽度</translation>
    </message>
    <message>
        <source>Size</source>
        <translation>尺寸</translation>
    </message>
    <message>
        <source>Preview of the picture</source>
        <translation>图片预览</translation>
    </message>
    <message>
        <source>A click shows the figure large</source>
        <translation>点按以放大显示图</translation>
    </message>
    <message>
        <source>Figure of the study</source>
        <translation>研究的图</translation>
    </message>
    <message>
        <source>%1, out of date</source>
        <translation>%1，已过时</translation>
    </message>
    <message>
        <source>&amp;Neck to neutral</source>
        <translation>颈部回到中性(&amp;N)</translation>
    </message>
    <message>
        <source>Neck to neutral</source>
        <translation>颈部回到中性</translation>
    </message>
    <message>
        <source>&amp;Tail to neutral</source>
        <translation>尾部回到中性(&amp;T)</translation>
    </message>
    <message>
        <source>Tail to neutral</source>
        <translation>尾部回到中性</translation>
    </message>
    <message>
        <source>&amp;All joints to neutral</source>
        <translation>全部关节回到中性(&amp;A)</translation>
    </message>
    <message>
        <source>All joints to neutral</source>
        <translation>全部关节回到中性</translation>
    </message>
    <message>
        <source>Neck to its &amp;limit</source>
        <translation>颈部到极限(&amp;L)</translation>
    </message>
    <message>
        <source>Tail to its l&amp;imit</source>
        <translation>尾部到极限(&amp;I)</translation>
    </message>
    <message>
        <source>Keep all limits as named &amp;poses</source>
        <translation>将全部极限存为命名姿态(&amp;P)</translation>
    </message>
    <message>
        <source>Neck &amp;dorsal</source>
        <translation>颈部背侧(&amp;D)</translation>
    </message>
    <message>
        <source>Tail &amp;dorsal</source>
        <translation>尾部背侧(&amp;D)</translation>
    </message>
    <message>
        <source>Neck &amp;ventral</source>
        <translation>颈部腹侧(&amp;V)</translation>
    </message>
    <message>
        <source>Tail &amp;ventral</source>
        <translation>尾部腹侧(&amp;V)</translation>
    </message>
    <message>
        <source>Neck &amp;left</source>
        <translation>颈部左侧(&amp;L)</translation>
    </message>
    <message>
        <source>Tail &amp;left</source>
        <translation>尾部左侧(&amp;L)</translation>
    </message>
    <message>
        <source>Neck &amp;right</source>
        <translation>颈部右侧(&amp;R)</translation>
    </message>
    <message>
        <source>Tail &amp;right</source>
        <translation>尾部右侧(&amp;R)</translation>
    </message>
    <message>
        <source>%1: %2. Assuming %3.</source>
        <translation>%1：%2。假设：%3。</translation>
    </message>
    <message>
        <source>Assuming %1. They are among the named poses now.</source>
        <translation>假设：%1。它们现已列入命名姿态。</translation>
    </message>
    <message>
        <source>Shown as a ghost</source>
        <translation>以虚影显示</translation>
    </message>
    <message>
        <source>The present pose</source>
        <translation>当前姿态</translation>
    </message>
    <message>
        <source>Double-click to take this pose</source>
        <translation>双击以采用此姿态</translation>
    </message>
    <message>
        <source>Named poses</source>
        <translation>命名姿态</translation>
    </message>
    <message>
        <source>Keep the present pose under a name</source>
        <translation>以名称保存当前姿态</translation>
    </message>
    <message>
        <source>Take this pose</source>
        <translation>采用此姿态</translation>
    </message>
    <message>
        <source>Put the present pose in its place</source>
        <translation>以当前姿态取代它</translation>
    </message>
    <message>
        <source>Rename</source>
        <translation>改名</translation>
    </message>
    <message>
        <source>Delete</source>
        <translation>删除</translation>
    </message>
    <message>
        <source>Show as a ghost beside the present pose</source>
        <translation>在当前姿态旁以虚影显示</translation>
    </message>
    <message>
        <source>New pose</source>
        <translation>新姿态</translation>
    </message>
    <message>
        <source>Take pose “%1”</source>
        <translation>采用姿态“%1”</translation>
    </message>
    <message>
        <source>Settings</source>
        <translation>设置</translation>
    </message>
    <message>
        <source>That of the desktop</source>
        <translation>与桌面相同</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>Light</source>
        <translation>浅色</translation>
    </message>
    <message>
        <source>Dark</source>
        <translation>深色</translation>
    </message>
    <message>
        <source>&amp;High contrast</source>
        <translation>高对比度(&amp;H)</translation>
    </message>
    <message>
        <source>Show the first &amp;steps</source>
        <translation>显示入门步骤(&amp;S)</translation>
    </message>
    <message>
        <source>&amp;Language</source>
        <translation>语言(&amp;L)</translation>
    </message>
    <message>
        <source>Size of the &amp;text</source>
        <translation>文字大小(&amp;T)</translation>
    </message>
    <message>
        <source>&amp;Theme</source>
        <translation>主题(&amp;T)</translation>
    </message>
    <message>
        <source>The window is built anew with another language or size of text; your work stays open.</source>
        <translation>更换语言或文字大小时窗口会重新建立；您的工作保持打开。</translation>
    </message>
    <message>
        <source>Apply</source>
        <translation>应用</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>取消</translation>
    </message>
    <message>
        <source>Tells neither left nor right, so it can't be laid on the ground</source>
        <translation>未说明左右，因此无法放到地面上</translation>
    </message>
    <message>
        <source>“%1” is no distance in cm; leave the cell blank when it is not known.</source>
        <translation>“%1”不是以厘米计的距离；不知道时请将单元格留空。</translation>
    </message>
    <message>
        <source>%1 of a footprint</source>
        <translation>足迹的%1</translation>
    </message>
    <message>
        <source>Add a footprint</source>
        <translation>添加足迹</translation>
    </message>
    <message>
        <source>Remove a footprint</source>
        <translation>移除足迹</translation>
    </message>
    <message>
        <source>The joints of the column appear here, from snout to tail tip</source>
        <translation>脊柱的关节显示在此处，从吻端到尾端</translation>
    </message>
    <message>
        <source>Bend %1</source>
        <translation>弯曲 %1</translation>
    </message>
    <message>
        <source>%1 bent together, each by its range; here %2</source>
        <translation>%1 一同弯曲，各按其范围；此处 %2</translation>
    </message>
    <message>
        <source>%1: drag up or down inside it to bend it, Escape lets it go</source>
        <translation>%1：在其中上下拖动以弯曲，Esc 放开</translation>
    </message>
    <message>
        <source>Click to show the whole column</source>
        <translation>点按以显示整个脊柱</translation>
    </message>
    <message>
        <source>Click to show the %1 alone</source>
        <translation>点按以单独显示%1</translation>
    </message>
    <message>
        <source>  ·  drag up or down to bend</source>
        <translation>  ·  上下拖动以弯曲</translation>
    </message>
    <message>
        <source>  ·  drag sideways to choose a span</source>
        <translation>  ·  横向拖动以选择一段</translation>
    </message>
    <message>
        <source>Reach</source>
        <translation>到达</translation>
    </message>
    <message>
        <source>&amp;Reach</source>
        <translation>到达(&amp;R)</translation>
    </message>
    <message>
        <source>Bend from the &amp;base</source>
        <translation>从根部弯曲(&amp;B)</translation>
    </message>
    <message>
        <source>&amp;Past the ranges</source>
        <translation>越过范围(&amp;P)</translation>
    </message>
    <message>
        <source>Keep the &amp;gaze</source>
        <translation>保持注视(&amp;G)</translation>
    </message>
    <message>
        <source>&amp;Lock or unlock the chosen joint</source>
        <translation>锁定或解锁所选关节(&amp;L)</translation>
    </message>
    <message>
        <source>Bend evenly</source>
        <translation>均匀弯曲</translation>
    </message>
    <message>
        <source>Each joint gives the same share of its own range</source>
        <translation>每个关节给出自身范围的相同份额</translation>
    </message>
    <message>
        <source>Bend from the base</source>
        <translation>从根部弯曲</translation>
    </message>
    <message>
        <source>The base and the head's joints bend most and the neck between keeps its shape, as in living tetrapods (Taylor, Wedel &amp; Naish 2009; Vidal, Graf &amp; Berthoz 1986)</source>
        <translation>根部与头部关节弯曲最多，其间的颈部保持形状，如同现生四足动物（Taylor, Wedel &amp; Naish 2009; Vidal, Graf &amp; Berthoz 1986）</translation>
    </message>
    <message>
        <source>Past the ranges</source>
        <translation>越过范围</translation>
    </message>
    <message>
        <source>A drag goes on where the bones would stop it; the joints that break are marked</source>
        <translation>拖动在骨骼会阻止之处继续进行；失去支持的关节会被标出</translation>
    </message>
    <message>
        <source>Keep the gaze</source>
        <translation>保持注视</translation>
    </message>
    <message>
        <source>A dragged head goes on looking in the same direction as far as its joints allow</source>
        <translation>被拖动的头部在关节允许的范围内继续朝同一方向注视</translation>
    </message>
    <message>
        <source>Unlock all</source>
        <translation>全部解锁</translation>
    </message>
    <message>
        <source>The bend begins at %1</source>
        <translation>弯曲从 %1 开始</translation>
    </message>
    <message>
        <source>The bend begins at the base of neck or tail</source>
        <translation>弯曲从颈根或尾根开始</translation>
    </message>
    <message>
        <source>Begin at the base again</source>
        <translation>重新从根部开始</translation>
    </message>
    <message>
        <source>Begin at %1</source>
        <translation>从 %1 开始</translation>
    </message>
    <message>
        <source>Begin at the chosen joint</source>
        <translation>从所选关节开始</translation>
    </message>
    <message>
        <source>No joint is locked</source>
        <translation>没有锁定的关节</translation>
    </message>
    <message>
        <source>Locked: %1</source>
        <translation>已锁定：%1</translation>
    </message>
    <message>
        <source>Lock the chosen joint</source>
        <translation>锁定所选关节</translation>
    </message>
    <message>
        <source>from the base</source>
        <translation>从根部</translation>
    </message>
    <message>
        <source>past the ranges</source>
        <translation>越过范围</translation>
    </message>
    <message>
        <source>gaze kept</source>
        <translation>保持注视</translation>
    </message>
    <message>
        <source>%1 locked</source>
        <translation>锁定 %1 个</translation>
    </message>
    <message>
        <source>Forget these</source>
        <translation>清除这些记录</translation>
    </message>
    <message>
        <source>Report</source>
        <translation>报告</translation>
    </message>
    <message>
        <source>Writing %1</source>
        <translation>正在写出 %1</translation>
    </message>
    <message>
        <source>Open it</source>
        <translation>打开</translation>
    </message>
    <message>
        <source>Everything about the present pose</source>
        <translation>关于当前姿态的一切</translation>
    </message>
    <message>
        <source>The claims and what they rest on, one page</source>
        <translation>论断及其依据，一页</translation>
    </message>
    <message>
        <source>Studies of height, reach, ranges and blood pressure</source>
        <translation>高度、可达、范围与血压的研究</translation>
    </message>
    <message>
        <source>The numbers as a table (CSV) beside it</source>
        <translation>同时附上数值表 (CSV)</translation>
    </message>
    <message>
        <source>PDF, A4 pages</source>
        <translation>PDF，A4 页面</translation>
    </message>
    <message>
        <source>HTML, one page</source>
        <translation>HTML，单页</translation>
    </message>
    <message>
        <source>The project holds no claims yet</source>
        <translation>该项目尚无论断</translation>
    </message>
    <message>
        <source>Contents</source>
        <translation>内容</translation>
    </message>
    <message>
        <source>With</source>
        <translation>附带</translation>
    </message>
    <message>
        <source>What the bones support, with sources and assumptions, so that others can check it. There is no date in it: the same project gives the same file.</source>
        <translation>骨骼所支持的内容，连同出处与假设，以便他人核查。其中没有日期：同一项目给出同一文件。</translation>
    </message>
    <message>
        <source>Scale</source>
        <translation>缩放</translation>
    </message>
    <message>
        <source>By</source>
        <translation>依据</translation>
    </message>
    <message>
        <source>New size</source>
        <translation>新尺寸</translation>
    </message>
    <message>
        <source>Every length becomes %1 times what it is. What is preserved is then marked as scaled from another specimen.</source>
        <translation>每个长度变为原来的 %1 倍。已保存的部分此后标为由另一标本按比例换算。</translation>
    </message>
    <message>
        <source>Type the new length.</source>
        <translation>请输入新的长度。</translation>
    </message>
    <message>
        <source>&amp;Import bone scans…</source>
        <translation>导入骨骼扫描(&amp;I)……</translation>
    </message>
    <message>
        <source>&amp;Place landmarks…</source>
        <translation>放置标志点(&amp;P)……</translation>
    </message>
    <message>
        <source>Su&amp;ggest landmarks and facets</source>
        <translation>建议标志点与关节面(&amp;G)</translation>
    </message>
    <message>
        <source>&amp;Carry marks over from a neighbour</source>
        <translation>自相邻骨骼转移标记(&amp;C)</translation>
    </message>
    <message>
        <source>Mi&amp;rror to the other side</source>
        <translation>镜像到另一侧(&amp;R)</translation>
    </message>
    <message>
        <source>&amp;Scale this bone…</source>
        <translation>缩放此骨骼(&amp;S)……</translation>
    </message>
    <message>
        <source>&amp;Remove scan</source>
        <translation>移除扫描(&amp;R)</translation>
    </message>
    <message>
        <source>Scale the &amp;animal…</source>
        <translation>缩放动物(&amp;A)……</translation>
    </message>
    <message>
        <source>&amp;Fit the animal to its scans</source>
        <translation>让动物与其扫描相配(&amp;F)</translation>
    </message>
    <message>
        <source>Place landmarks…</source>
        <translation>放置标志点……</translation>
    </message>
    <message>
        <source>Mirror to the other side</source>
        <translation>镜像到另一侧</translation>
    </message>
    <message>
        <source>Remove scan</source>
        <translation>移除扫描</translation>
    </message>
    <message>
        <source>Open a sample, a table or a project first: real bones take their places in an animal.</source>
        <translation>请先打开样本、表格或项目：真实骨骼要放入一只动物之中。</translation>
    </message>
    <message>
        <source>There are no mesh files in %1.</source>
        <translation>%1 中没有网格文件。</translation>
    </message>
    <message>
        <source>Mesh files of bones</source>
        <translation>骨骼的网格文件</translation>
    </message>
    <message>
        <source>Meshes %1</source>
        <translation>网格 %1</translation>
    </message>
    <message>
        <source>Import %1 and fit the animal to it</source>
        <translation>导入 %1 并让动物与之相配</translation>
    </message>
    <message>
        <source>Import %1 bones and fit the animal to them</source>
        <translation>导入 %1 块骨骼并让动物与之相配</translation>
    </message>
    <message>
        <source>Import %1</source>
        <translation>导入 %1</translation>
    </message>
    <message>
        <source>Import %1 bones</source>
        <translation>导入 %1 块骨骼</translation>
    </message>
    <message>
        <source>Suggest landmarks and facets</source>
        <translation>建议标志点与关节面</translation>
    </message>
    <message>
        <source>Place landmarks</source>
        <translation>放置标志点</translation>
    </message>
    <message>
        <source>%1 is in the skeleton. Its landmarks decide how it lies and what its joints allow.</source>
        <translation>%1 已加入骨架。其标志点决定它如何放置以及其关节允许什么。</translation>
    </message>
    <message>
        <source>%1 bones are in the skeleton. Their landmarks decide how they lie and what their joints allow.</source>
        <translation>%1 块骨骼已加入骨架。其标志点决定它们如何放置以及其关节允许什么。</translation>
    </message>
    <message>
        <source>The animal is %1 times as large as it was.</source>
        <translation>动物现为原来的 %1 倍大。</translation>
    </message>
    <message>
        <source>No real bone has been brought in yet. Drop mesh files on the window, or choose them here.</source>
        <translation>尚未导入真实骨骼。请将网格文件拖到窗口上，或在此选择。</translation>
    </message>
    <message>
        <source>Choose a bone that was brought in from a scan first; sculpted bones follow the table.</source>
        <translation>请先选择一块由扫描导入的骨骼；塑形的骨骼依照表格。</translation>
    </message>
    <message>
        <source>%1 lies in the midline and has no other side.</source>
        <translation>%1 位于中线，没有另一侧。</translation>
    </message>
    <message>
        <source>its greatest extent</source>
        <translation>其最大尺寸</translation>
    </message>
    <message>
        <source>Open an animal first.</source>
        <translation>请先打开一只动物。</translation>
    </message>
    <message>
        <source>Scale the animal by %1</source>
        <translation>将动物缩放 %1</translation>
    </message>
    <message>
        <source>Fit the animal to its scans</source>
        <translation>让动物与其扫描相配</translation>
    </message>
    <message>
        <source>The animal has the size of its scans already.</source>
        <translation>动物已与其扫描的尺寸相符。</translation>
    </message>
    <message>
        <source>The animal has the size of its scans; what they measure is in its table now.</source>
        <translation>动物与其扫描的尺寸相符；扫描上量得的值现已写入其测量表。</translation>
    </message>
    <message>
        <source>The animal is %1 times as large as it was. What its scans measure is kept; every other length was scaled.</source>
        <translation>动物现为原来的 %1 倍大。在其扫描上量得的值保持不变；其他所有长度均已缩放。</translation>
    </message>
    <message>
        <source>Facets are found where two scanned vertebrae lie in articulation: import neighbours in one common frame.</source>
        <translation>关节面在两块相互关节的扫描椎骨之间寻找：请导入处于同一坐标系中的相邻椎骨。</translation>
    </message>
    <message>
        <source>Looking for landmarks and facets</source>
        <translation>正在寻找标志点与关节面</translation>
    </message>
    <message>
        <source>Marks suggested and put on %1: %2. They come from shape alone: look at each and accept it, or mark it anew.</source>
        <translation>已在 %1 上放置建议的标记：%2 个。它们仅由形状得出：请逐一查看，接受或重新标记。</translation>
    </message>
    <message>
        <source>Carrying marks over</source>
        <translation>正在转移标记</translation>
    </message>
    <message>
        <source>No vertebra lacks marks that another scanned one has.</source>
        <translation>没有椎骨缺少其他扫描椎骨已有的标记。</translation>
    </message>
    <message>
        <source>Nothing was carried over: no other vertebra is enough alike.</source>
        <translation>未转移任何标记：没有足够相似的其他椎骨。</translation>
    </message>
    <message>
        <source>Carry marks over</source>
        <translation>转移标记</translation>
    </message>
    <message>
        <source>Marks carried over: %1. They are suggestions from another bone: look at each and accept it, or mark it anew.</source>
        <translation>转移的标记：%1。它们是来自另一块骨骼的建议：请逐一查看并接受，或重新标记。</translation>
    </message>
    <message>
        <source>%1.</source>
        <translation>%1。</translation>
    </message>
    <message>
        <source>Nothing could be suggested: no two of the scanned vertebrae are neighbours.</source>
        <translation>无法提出建议：扫描的椎骨中没有两块相邻。</translation>
    </message>
    <message>
        <source>Nothing more is suggested: what is sure enough is marked already.</source>
        <translation>没有更多建议：有把握的都已标记。</translation>
    </message>
    <message>
        <source>Look in a folder…</source>
        <translation>在文件夹中查找…</translation>
    </message>
    <message>
        <source>Further scans: %1</source>
        <translation>其余扫描：%1</translation>
    </message>
    <message>
        <source>Scans that are not in their place</source>
        <translation>不在原位的扫描</translation>
    </message>
    <message>
        <source>Look for scans in a folder</source>
        <translation>在文件夹中查找扫描</translation>
    </message>
    <message>
        <source>None of the missing scans is in %1 or the folders in it.</source>
        <translation>%1 及其子文件夹中没有缺失的扫描。</translation>
    </message>
    <message>
        <source>Find scans again</source>
        <translation>找回扫描</translation>
    </message>
    <message>
        <source>Scans found again: %1. Save the project to keep them with it.</source>
        <translation>已找回扫描：%1。请保存项目，使它们与项目在一起。</translation>
    </message>
    <message>
        <source>The bones could not be sculpted: %1. Posing and judging go on without them.</source>
        <translation>骨骼无法塑形：%1。姿态与判定照常进行。</translation>
    </message>
    <message>
        <source>Copy all</source>
        <translation>全部复制</translation>
    </message>
    <message>
        <source>Sheet</source>
        <translation>图版</translation>
    </message>
    <message>
        <source>Title</source>
        <translation>标题</translation>
    </message>
    <message>
        <source>Layout</source>
        <translation>版式</translation>
    </message>
    <message>
        <source>Side view</source>
        <translation>侧视图</translation>
    </message>
    <message>
        <source>Three views</source>
        <translation>三视图</translation>
    </message>
    <message>
        <source>What is known</source>
        <translation>已知部分</translation>
    </message>
    <message>
        <source>Neck with its joints</source>
        <translation>颈部及其关节</translation>
    </message>
    <message>
        <source>Plate of bones in five views</source>
        <translation>骨骼五视图图版</translation>
    </message>
    <message>
        <source>C5, manus.L, pelvis …</source>
        <translation>C5, manus.L, pelvis …</translation>
    </message>
    <message>
        <source>Bones of the plate</source>
        <translation>图中骨骼</translation>
    </message>
    <message>
        <source>Paper</source>
        <translation>纸张</translation>
    </message>
    <message>
        <source>A4</source>
        <translation>A4</translation>
    </message>
    <message>
        <source>A3</source>
        <translation>A3</translation>
    </message>
    <message>
        <source>A2</source>
        <translation>A2</translation>
    </message>
    <message>
        <source>A1</source>
        <translation>A1</translation>
    </message>
    <message>
        <source>Shaded picture</source>
        <translation>明暗图像</translation>
    </message>
    <message>
        <source>Outline drawing</source>
        <translation>轮廓线图</translation>
    </message>
    <message>
        <source>Solid silhouette</source>
        <translation>实心剪影</translation>
    </message>
    <message>
        <source>White before a dark body</source>
        <translation>深色体形上的白色骨骼</translation>
    </message>
    <message>
        <source>As large as fits</source>
        <translation>尽可能大</translation>
    </message>
    <message>
        <source>Height of the human figure</source>
        <translation>人形的身高</translation>
    </message>
    <message>
        <source>Human figure</source>
        <translation>人形</translation>
    </message>
    <message>
        <source>Tone bones by their evidence</source>
        <translation>按证据为骨骼着色</translation>
    </message>
    <message>
        <source>Mark the joints' verdicts</source>
        <translation>标出关节的判定</translation>
    </message>
    <message>
        <source>Heights and lengths</source>
        <translation>高度与长度</translation>
    </message>
    <message>
        <source>Ground line</source>
        <translation>地面线</translation>
    </message>
    <message>
        <source>Numbered notes</source>
        <translation>编号注释</translation>
    </message>
    <message>
        <source>Transparent paper</source>
        <translation>透明纸张</translation>
    </message>
    <message>
        <source> px</source>
        <translation> 像素</translation>
    </message>
    <message>
        <source>Width of a PNG; PDF and SVG need none</source>
        <translation>PNG 的宽度；PDF 与 SVG 不需要</translation>
    </message>
    <message>
        <source>&amp;Save as PDF, SVG or PNG…</source>
        <translation>存为 PDF、SVG 或 PNG(&amp;S)……</translation>
    </message>
    <message>
        <source>PNG width</source>
        <translation>PNG 宽度</translation>
    </message>
    <message>
        <source>Change the sheet</source>
        <translation>更改图版</translation>
    </message>
    <message>
        <source>Save the sheet</source>
        <translation>保存图版</translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation>PDF (*.pdf)</translation>
    </message>
    <message>
        <source>SVG (*.svg)</source>
        <translation>SVG (*.svg)</translation>
    </message>
    <message>
        <source>PNG (*.png)</source>
        <translation>PNG (*.png)</translation>
    </message>
    <message>
        <source>A sheet ends in .pdf, .svg or .png.</source>
        <translation>图版的文件名以 .pdf、.svg 或 .png 结尾。</translation>
    </message>
    <message>
        <source>Preview of the sheet</source>
        <translation>图版预览</translation>
    </message>
    <message>
        <source>Drawing the sheet…</source>
        <translation>正在绘制图版……</translation>
    </message>
    <message>
        <source>Vary the assumptions</source>
        <translation>变动假设</translation>
    </message>
    <message>
        <source>Samples</source>
        <translation>抽样数</translation>
    </message>
    <message>
        <source>Animals that might have been; more give steadier numbers</source>
        <translation>可能存在过的动物；越多则数值越稳</translation>
    </message>
    <message>
        <source>Seed</source>
        <translation>种子</translation>
    </message>
    <message>
        <source>The same seed gives the same numbers on every machine</source>
        <translation>同一种子在每台机器上给出相同数值</translation>
    </message>
    <message>
        <source>Measured</source>
        <translation>实测</translation>
    </message>
    <message>
        <source>Standard error of a length that was measured, each by itself</source>
        <translation>实测长度的标准误，各自独立</translation>
    </message>
    <message>
        <source>Inferred</source>
        <translation>推断</translation>
    </message>
    <message>
        <source>Standard error of lengths that a rule has filled in; those of one rule err together</source>
        <translation>由规则补出的长度的标准误；同一规则者一同偏差</translation>
    </message>
    <message>
        <source>%1, from</source>
        <translation>%1，从</translation>
    </message>
    <message>
        <source>%1, to</source>
        <translation>%1，到</translation>
    </message>
    <message>
        <source>&amp;Stand on the ground</source>
        <translation>站立于地面(&amp;S)</translation>
    </message>
    <message>
        <source>Stand on the ground</source>
        <translation>站立于地面</translation>
    </message>
    <message>
        <source>S&amp;tances</source>
        <translation>站姿(&amp;T)</translation>
    </message>
    <message>
        <source>&amp;Feet</source>
        <translation>脚(&amp;F)</translation>
    </message>
    <message>
        <source>T&amp;runk</source>
        <translation>躯干(&amp;R)</translation>
    </message>
    <message>
        <source>Lift or plant the %1</source>
        <translation>抬起或放下%1</translation>
    </message>
    <message>
        <source>&amp;Plant all feet</source>
        <translation>全部脚落地(&amp;P)</translation>
    </message>
    <message>
        <source>&amp;Raise over planted feet</source>
        <translation>在落地的脚上方升高(&amp;R)</translation>
    </message>
    <message>
        <source>&amp;Lower over planted feet</source>
        <translation>在落地的脚上方降低(&amp;L)</translation>
    </message>
    <message>
        <source>Tilt &amp;up about the hips</source>
        <translation>绕髋部上倾(&amp;U)</translation>
    </message>
    <message>
        <source>Tilt &amp;down about the hips</source>
        <translation>绕髋部下倾(&amp;D)</translation>
    </message>
    <message>
        <source>&amp;Lift the %1</source>
        <translation>抬起%1(&amp;L)</translation>
    </message>
    <message>
        <source>&amp;Plant the %1</source>
        <translation>放下%1(&amp;P)</translation>
    </message>
    <message>
        <source>Plant &amp;all feet</source>
        <translation>全部脚落地(&amp;A)</translation>
    </message>
    <message>
        <source>%1: snout at %2, assuming %3.</source>
        <translation>%1：吻端高 %2，假设：%3。</translation>
    </message>
    <message>
        <source>Out of range: %1.</source>
        <translation>超出活动范围：%1。</translation>
    </message>
    <message>
        <source>Raise the trunk</source>
        <translation>升高躯干</translation>
    </message>
    <message>
        <source>Lower the trunk</source>
        <translation>降低躯干</translation>
    </message>
    <message>
        <source>Tilt the trunk</source>
        <translation>倾斜躯干</translation>
    </message>
    <message>
        <source>Stand</source>
        <translation>站立</translation>
    </message>
    <message>
        <source>Feet</source>
        <translation>脚</translation>
    </message>
    <message>
        <source>Shoulder blades</source>
        <translation>肩胛骨</translation>
    </message>
    <message>
        <source>Slope of the line through the dorsal centra to the horizontal, positive when it rises forwards; and the turn about its length, positive with the left side raised</source>
        <translation>背椎椎体连线对水平面的坡度，向前升高为正；以及绕其长轴的转动，左侧抬起为正</translation>
    </message>
    <message>
        <source>Mean height of the two hip sockets over the ground</source>
        <translation>两侧髋臼离地的平均高度</translation>
    </message>
    <message>
        <source>Mean height of the two shoulder sockets over the ground</source>
        <translation>两侧肩臼离地的平均高度</translation>
    </message>
    <message>
        <source>Hip to shoulder</source>
        <translation>髋到肩</translation>
    </message>
    <message>
        <source>Glenoacetabular distance: straight from socket to socket, mean of both sides</source>
        <translation>肩臼–髋臼距：从臼到臼的直线距离，两侧平均</translation>
    </message>
    <message>
        <source>Base of the neck</source>
        <translation>颈根</translation>
    </message>
    <message>
        <source>Base of the tail</source>
        <translation>尾根</translation>
    </message>
    <message>
        <source>Slope of the line through the first five caudals, positive when it rises backwards</source>
        <translation>前五节尾椎椎体连线的坡度，向后升高为正</translation>
    </message>
    <message>
        <source>Right</source>
        <translation>右</translation>
    </message>
    <message>
        <source>Slope</source>
        <translation>坡度</translation>
    </message>
    <message>
        <source>Along the ribs</source>
        <translation>沿肋骨</translation>
    </message>
    <message>
        <source>Slope of the %1 shoulder blade to the horizontal</source>
        <translation>%1肩胛骨对水平面的坡度</translation>
    </message>
    <message>
        <source>How far the %1 shoulder blade is slid up along the ribs</source>
        <translation>%1肩胛骨沿肋骨上移的距离</translation>
    </message>
    <message>
        <source>Both together</source>
        <translation>两侧一起</translation>
    </message>
    <message>
        <source>%1, roll %2</source>
        <translation>%1，侧倾 %2</translation>
    </message>
    <message>
        <source>Slope of the hindmost cervical by its %1, positive when it rises forwards</source>
        <translation>最后一节颈椎按其%1的倾角，向前升高为正</translation>
    </message>
    <message>
        <source>trunk %1</source>
        <translation>躯干 %1</translation>
    </message>
    <message>
        <source>trunk %1, hip %2</source>
        <translation>躯干 %1，髋 %2</translation>
    </message>
    <message>
        <source>on the ground</source>
        <translation>在地面上</translation>
    </message>
    <message>
        <source>%1 over ground</source>
        <translation>离地 %1</translation>
    </message>
    <message>
        <source>%1 under ground</source>
        <translation>没入地面 %1</translation>
    </message>
    <message>
        <source>tilted %1</source>
        <translation>倾斜 %1</translation>
    </message>
    <message>
        <source>Lift</source>
        <translation>抬起</translation>
    </message>
    <message>
        <source>Plant</source>
        <translation>放下</translation>
    </message>
    <message>
        <source>Published: at least 55° to the horizontal, 55° to 65° in three genera (Schwarz, Frey &amp; Meyer 2007).</source>
        <translation>已发表：对水平面至少 55°，三个属为 55° 到 65°（Schwarz, Frey &amp; Meyer 2007）。</translation>
    </message>
    <message>
        <source>Flatter than what is published. </source>
        <translation>比已发表的更平缓。</translation>
    </message>
    <message>
        <source>Key to the marks</source>
        <translation>标记说明</translation>
    </message>
    <message>
        <source>Studies</source>
        <translation>研究</translation>
    </message>
    <message>
        <source>St&amp;udies</source>
        <translation>研究(&amp;U)</translation>
    </message>
    <message>
        <source>&amp;Draw the feeding envelope</source>
        <translation>画出取食范围(&amp;D)</translation>
    </message>
    <message>
        <source>Study</source>
        <translation>研究</translation>
    </message>
    <message>
        <source>Stop the study</source>
        <translation>停止研究</translation>
    </message>
    <message>
        <source>Save…</source>
        <translation>保存……</translation>
    </message>
    <message>
        <source>The figure as SVG, PDF or PNG, or the numbers as JSON</source>
        <translation>图为 SVG、PDF 或 PNG，或数值为 JSON</translation>
    </message>
    <message>
        <source>Copy</source>
        <translation>复制</translation>
    </message>
    <message>
        <source>The sentences as text and the figure as a picture</source>
        <translation>句子为文本，图为图片</translation>
    </message>
    <message>
        <source>Run again</source>
        <translation>重新运行</translation>
    </message>
    <message>
        <source>Run</source>
        <translation>运行</translation>
    </message>
    <message>
        <source>Out of date: the pose or the assumptions have changed since.</source>
        <translation>已过时：姿态或假设此后已更改。</translation>
    </message>
    <message>
        <source>Open an animal to study it.</source>
        <translation>打开一只动物以进行研究。</translation>
    </message>
    <message>
        <source>working</source>
        <translation>计算中</translation>
    </message>
    <message>
        <source>The study is on the clipboard, as text and as a picture.</source>
        <translation>该研究已作为文本与图片放入剪贴板。</translation>
    </message>
    <message>
        <source>Save the study</source>
        <translation>保存研究</translation>
    </message>
    <message>
        <source>Drawing (*.svg);;Page (*.pdf);;Picture (*.png);;Numbers (*.json)</source>
        <translation>图画 (*.svg);;页面 (*.pdf);;图片 (*.png);;数值 (*.json)</translation>
    </message>
    <message>
        <source>Sideways too, with space and ground</source>
        <translation>也包括侧向，含空间与地面</translation>
    </message>
    <message>
        <source>Also the space that the snout reaches with the neck swung and twisted, and the strip on the ground; takes up to half a minute</source>
        <translation>也包括颈部摆动和扭转时吻端所及的空间，以及地面上的条带；最多需要半分钟</translation>
    </message>
    <message>
        <source>Draw it in the view</source>
        <translation>在视图中绘制</translation>
    </message>
    <message>
        <source>The side outline around the animal and the strip on the ground</source>
        <translation>围绕动物的侧面轮廓与地面上的条带</translation>
    </message>
    <message>
        <source>Heart in the chest</source>
        <translation>心脏在胸腔中的位置</translation>
    </message>
    <message>
        <source>Height of the heart in the chest</source>
        <translation>心脏在胸腔中的高度</translation>
    </message>
    <message>
        <source>0 % at the ends of the ribs, 100 % at the column; an assumption</source>
        <translation>0 % 在肋骨末端，100 % 在脊柱处；为一项假设</translation>
    </message>
    <message>
        <source>Tension at</source>
        <translation>拉力位置</translation>
    </message>
    <message>
        <source>Height of the tension over the neck</source>
        <translation>拉力在颈部之上的高度</translation>
    </message>
    <message>
        <source>Where what holds the neck from above runs, in percent of the height of the neural spines over the axis of the centrum; an assumption. Densities are those of mass and balance</source>
        <translation>从上方维持颈部的构件的走行位置，以神经棘在椎体轴线之上高度的百分比表示；为假定。密度取自质量与平衡</translation>
    </message>
    <message>
        <source>Range of dorsiflexion and lateral flexion together</source>
        <translation>背屈与侧屈合在一起的活动范围</translation>
    </message>
    <message>
        <source>What is within range when this joint is raised or lowered (up, down) and bent to a side (left, right), its axial rotation as it is. Drag the mark to turn the joint; arrow keys do the same.</source>
        <translation>此关节抬起或放下（上、下）并侧屈（左、右）时的活动范围，轴向旋转不变。拖动标记可转动关节；方向键亦可。</translation>
    </message>
    <message>
        <source>dorsiflexion %1, lateral flexion %2, %3</source>
        <translation>背屈 %1，侧屈 %2，%3</translation>
    </message>
    <message>
        <source>Measurement &amp;table…</source>
        <translation>测量表(&amp;T)…</translation>
    </message>
    <message>
        <source>Open a measurement table into this project</source>
        <translation>在此项目中打开测量表</translation>
    </message>
    <message>
        <source>%1 is no measurement table.</source>
        <translation>%1 不是测量表。</translation>
    </message>
    <message>
        <source>Table from %1</source>
        <translation>来自 %1 的表格</translation>
    </message>
    <message>
        <source>Save the measurement table</source>
        <translation>保存测量表</translation>
    </message>
    <message>
        <source>Save a blank measurement table</source>
        <translation>保存空白测量表</translation>
    </message>
    <message>
        <source>%1 was opened with remarks</source>
        <translation>%1 已打开，有备注</translation>
    </message>
    <message>
        <source>%1 has one fault</source>
        <translation>%1 有一处错误</translation>
    </message>
    <message numerus="yes">
        <source>%1 has %n faults</source>
        <translation>
            <numerusform>%1 有 %n 处错误</numerusform>
        </translation>
    </message>
    <message>
        <source>Kind</source>
        <translation>类别</translation>
    </message>
    <message>
        <source>Line</source>
        <translation>行</translation>
    </message>
    <message>
        <source>Column</source>
        <translation>列</translation>
    </message>
    <message>
        <source>What is wrong</source>
        <translation>问题</translation>
    </message>
    <message>
        <source>What to do</source>
        <translation>如何处理</translation>
    </message>
    <message>
        <source>fault</source>
        <translation>错误</translation>
    </message>
    <message>
        <source>remark</source>
        <translation>备注</translation>
    </message>
    <message>
        <source>Nothing was opened, and what was open is as it was. Correct the table and open it again.</source>
        <translation>没有打开任何内容，原先打开的内容保持不变。请修正该表后重新打开。</translation>
    </message>
    <message>
        <source>The table is in use. These cells deserve a second look.</source>
        <translation>该表已在使用。这些单元格值得再看一遍。</translation>
    </message>
    <message>
        <source>Footprints, distances in cm</source>
        <translation>足迹，距离以厘米计</translation>
    </message>
    <message>
        <source>Trackway</source>
        <translation>行迹</translation>
    </message>
    <message>
        <source>Drop a table of footprints here (foot, pace_cm, next_pace_cm, stride_cm, length_cm), or type them one by one.</source>
        <translation>将足迹表拖到此处（foot, pace_cm, next_pace_cm, stride_cm, length_cm），或逐个输入。</translation>
    </message>
    <message>
        <source>Open table…</source>
        <translation>打开表格……</translation>
    </message>
    <message>
        <source>Read footprints from a CSV table</source>
        <translation>从 CSV 表读取足迹</translation>
    </message>
    <message>
        <source>Add print</source>
        <translation>添加足迹</translation>
    </message>
    <message>
        <source>A further footprint, with the last one's distances</source>
        <translation>再加一个足迹，沿用上一个的距离</translation>
    </message>
    <message>
        <source>Remove the chosen footprint</source>
        <translation>移除所选足迹</translation>
    </message>
    <message>
        <source>Clear</source>
        <translation>清空</translation>
    </message>
    <message>
        <source>Remove all footprints</source>
        <translation>移除全部足迹</translation>
    </message>
    <message>
        <source>Clear the trackway</source>
        <translation>清空行迹</translation>
    </message>
    <message>
        <source>Hip height from the length of the hind print</source>
        <translation>由后足迹长度得出的髋高</translation>
    </message>
    <message>
        <source>%1 × print</source>
        <translation>%1 × 足迹</translation>
    </message>
    <message>
        <source>Hip is</source>
        <translation>髋高为</translation>
    </message>
    <message>
        <source>Pace angulation</source>
        <translation>步角</translation>
    </message>
    <message>
        <source>Relative stride</source>
        <translation>相对复步长</translation>
    </message>
    <message>
        <source>Speed</source>
        <translation>速度</translation>
    </message>
    <message>
        <source>The feet on it</source>
        <translation>踏在其上的脚</translation>
    </message>
    <message>
        <source>Move trackway to feet</source>
        <translation>将足迹移到脚下</translation>
    </message>
    <message>
        <source>Move the trackway to where it lies best under the feet</source>
        <translation>将行迹移到与脚最吻合之处</translation>
    </message>
    <message>
        <source>Place feet on prints</source>
        <translation>将脚放到足迹上</translation>
    </message>
    <message>
        <source>Put every foot onto its nearest print; the trunk comes down as far as the legs need</source>
        <translation>将每只脚放到最近的足迹上；躯干按腿的需要下降</translation>
    </message>
    <message>
        <source>Draw the prints</source>
        <translation>绘制足迹</translation>
    </message>
    <message>
        <source>Open a table of footprints</source>
        <translation>打开足迹表</translation>
    </message>
    <message>
        <source>Tables (*.csv)</source>
        <translation>表格 (*.csv)</translation>
    </message>
    <message>
        <source>Trackway from %1</source>
        <translation>来自 %1 的行迹</translation>
    </message>
    <message>
        <source>Nothing was taken from the table:</source>
        <translation>未从该表取用任何内容：</translation>
    </message>
    <message>
        <source>Hip height from prints</source>
        <translation>由足迹得出的髋高</translation>
    </message>
    <message>
        <source>Move the trackway to the feet</source>
        <translation>将足迹移到脚下</translation>
    </message>
    <message>
        <source>Place the feet on the prints</source>
        <translation>将脚放到足迹上</translation>
    </message>
    <message>
        <source>The trunk came down by %1.</source>
        <translation>躯干下降了 %1。</translation>
    </message>
    <message>
        <source>Not every foot reaches its print; the worst is %1 away.</source>
        <translation>并非每只脚都够得到足迹；最差者相距 %1。</translation>
    </message>
    <message>
        <source>Assuming %1</source>
        <translation>假设：%1</translation>
    </message>
    <message>
        <source>Viewport</source>
        <translation>视口</translation>
    </message>
    <message>
        <source>The skeleton in its present pose. Arrow keys bend the chosen joint.</source>
        <translation>当前姿态的骨架。方向键弯曲所选关节。</translation>
    </message>
    <message>
        <source>Nudge %1, %2</source>
        <translation>微调 %1，%2</translation>
    </message>
</context>
</TS>
