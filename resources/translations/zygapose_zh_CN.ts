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
        <source>Lean: the least seen in living reptiles</source>
        <translation>瘦：现生爬行动物中所见的最小值</translation>
    </message>
    <message>
        <source>Usual in living reptiles</source>
        <translation>现生爬行动物的通常值</translation>
    </message>
    <message>
        <source>Full: as in crocodiles</source>
        <translation>丰满：如鳄类</translation>
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
    <message>
        <source> and %1 more</source>
        <translation> 等另外 %1 个</translation>
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
        <source>%1 mm short</source>
        <translation>差 %1 毫米</translation>
    </message>
    <message>
        <source>%1 m short</source>
        <translation>差 %1 米</translation>
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
        <source>found</source>
        <translation>已发现</translation>
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
        <source>%1 to %2 %3</source>
        <translation>%1 到 %2 %3</translation>
    </message>
    <message>
        <source>unknown</source>
        <translation>未知</translation>
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
        <source>Lateral flexion</source>
        <translation>侧屈</translation>
    </message>
    <message>
        <source>Torsion</source>
        <translation>扭转</translation>
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
        <source>no angle is supported</source>
        <translation>没有受支持的角度</translation>
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
        <source>These bones do not move against each other.</source>
        <translation>这些骨骼之间没有相对运动。</translation>
    </message>
    <message>
        <source>Not judged: the facets of one side are not known.</source>
        <translation>未判定：一侧的关节面未知。</translation>
    </message>
    <message>
        <source>Not judged: no facets meet here and nobody has typed limits.</source>
        <translation>未判定：此处没有关节面相接，也没有人给定限度。</translation>
    </message>
    <message>
        <source>No facets meet here. The limits are typed: %1.</source>
        <translation>此处没有关节面相接。限度为给定：%1。</translation>
    </message>
    <message>
        <source>%1 beyond</source>
        <translation>%1 个超出</translation>
    </message>
    <message>
        <source>%1 near</source>
        <translation>%1 个接近极限</translation>
    </message>
    <message>
        <source>%1 of %2 joints</source>
        <translation>%2 个关节中有 %1</translation>
    </message>
    <message>
        <source>%1 of %2 joints supported</source>
        <translation>%2 个关节中 %1 个受支持</translation>
    </message>
    <message>
        <source>all %1 joints supported</source>
        <translation>全部 %1 个关节受支持</translation>
    </message>
    <message>
        <source>, %1 not judged</source>
        <translation>，%1 个未判定</translation>
    </message>
    <message>
        <source>, 1 contact</source>
        <translation>，1 处接触</translation>
    </message>
    <message>
        <source>, %1 contacts</source>
        <translation>，%1 处接触</translation>
    </message>
    <message>
        <source>by length</source>
        <translation>按长度</translation>
    </message>
    <message>
        <source>by area</source>
        <translation>按面积</translation>
    </message>
    <message>
        <source>%1 % %2, %3 cartilage</source>
        <translation>%1 % %2，软骨 %3</translation>
    </message>
    <message>
        <source>, centrum faces parallel</source>
        <translation>，椎体端面平行</translation>
    </message>
    <message>
        <source>neutral</source>
        <translation>中性</translation>
    </message>
    <message>
        <source>most dorsiflexed</source>
        <translation>最大背屈</translation>
    </message>
    <message>
        <source>most ventriflexed</source>
        <translation>最大腹屈</translation>
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
        <source>%1: %2 m, neck %3°</source>
        <translation>%1：%2 米，颈部 %3°</translation>
    </message>
    <message>
        <source> m</source>
        <translation> 米</translation>
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
        <source>%1 high</source>
        <translation>高 %1</translation>
    </message>
    <message>
        <source>%1 ahead</source>
        <translation>向前 %1</translation>
    </message>
    <message>
        <source>%1 mmHg, %2 m</source>
        <translation>%1 mmHg，%2 米</translation>
    </message>
    <message>
        <source>column of blood from heart to head, mmHg</source>
        <translation>从心脏到头部的血柱，mmHg</translation>
    </message>
    <message>
        <source>upright sauropod in one published view</source>
        <translation>一种已发表观点中直立颈部的蜥脚类</translation>
    </message>
    <message>
        <source>down – up, °</source>
        <translation>下 – 上，°</translation>
    </message>
    <message>
        <source>right – left, °</source>
        <translation>右 – 左，°</translation>
    </message>
    <message>
        <source>torsion right – left, °</source>
        <translation>扭转 右 – 左，°</translation>
    </message>
    <message>
        <source>bar: supported from neutral; dotted: typed; mark: present angle, triangle beyond</source>
        <translation>条：自中性起受支持；点线：给定限度；标记：当前角度，三角为超出</translation>
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
        <source>1 m</source>
        <translation>1 米</translation>
    </message>
    <message>
        <source>10 cm</source>
        <translation>10 厘米</translation>
    </message>
    <message>
        <source>length</source>
        <translation>长度</translation>
    </message>
    <message>
        <source>snout over the ground, m</source>
        <translation>吻端离地，米</translation>
    </message>
    <message>
        <source>slope of the neck, °</source>
        <translation>颈部坡度，°</translation>
    </message>
    <message>
        <source>hill: %1 draws; bar: 5 to 95 %; stroke: half of them; diamond: the table as it is</source>
        <translation>山形：%1 次抽样；条：5 到 95 %；粗线：其中一半；菱形：表格原值</translation>
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
        <source>%1 triangles, %2 × %3 × %4 mm</source>
        <translation>%1 个三角形，%2 × %3 × %4 毫米</translation>
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
        <source>%1 of %2 bones found, %3 %; %4 % if each stands for its fellow too</source>
        <translation>%2 块骨骼中发现 %1 块，%3 %；若每块也代表其对侧则为 %4 %</translation>
    </message>
    <message>
        <source>no source given</source>
        <translation>未给出出处</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1 %</translation>
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
        <source>torsion</source>
        <translation>扭转</translation>
    </message>
    <message>
        <source>facets share</source>
        <translation>关节面共有</translation>
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
        <source>There are no bones to draw.</source>
        <translation>没有可画的骨骼。</translation>
    </message>
    <message>
        <source>%1 m</source>
        <translation>%1 米</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1（%2）</translation>
    </message>
    <message>
        <source>joint supported</source>
        <translation>关节受支持</translation>
    </message>
    <message>
        <source>near its limit</source>
        <translation>接近极限</translation>
    </message>
    <message>
        <source>beyond its range</source>
        <translation>超出范围</translation>
    </message>
    <message>
        <source>not judged</source>
        <translation>未判定</translation>
    </message>
    <message>
        <source>%1 m as posed</source>
        <translation>%1 米（按当前姿态）</translation>
    </message>
    <message>
        <source>%1 %2 m</source>
        <translation>%1 %2 米</translation>
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
        <source>Neck, left lateral view</source>
        <translation>颈部，左侧视图</translation>
    </message>
    <message>
        <source>area</source>
        <translation>面积</translation>
    </message>
    <message>
        <source>Facets share at least %1 % by %2.</source>
        <translation>关节面至少共有 %1 %，按%2计。</translation>
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
        <source>Facets may press in by %1 % and gape by %2 % of their length.</source>
        <translation>关节面可压入其长度的 %1 %，可张开 %2 %。</translation>
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
    <message>
        <source>and %1 more</source>
        <translation>以及另外 %1 个</translation>
    </message>
    <message>
        <source>Sources: %1.</source>
        <translation>出处：%1。</translation>
    </message>
    <message>
        <source> (%1, %2</source>
        <translation>（%1，%2</translation>
    </message>
    <message>
        <source>; %1)</source>
        <translation>；%1）</translation>
    </message>
    <message>
        <source>%1 of %2 joints beyond their range</source>
        <translation>%2 个关节中 %1 个超出范围</translation>
    </message>
    <message>
        <source>No joint beyond its range, %1 of %2 near it</source>
        <translation>没有关节超出范围，%2 个中 %1 个接近极限</translation>
    </message>
    <message>
        <source>No joint beyond its range</source>
        <translation>没有关节超出范围</translation>
    </message>
    <message>
        <source>present pose</source>
        <translation>当前姿态</translation>
    </message>
    <message>
        <source>Pose: %1.</source>
        <translation>姿态：%1。</translation>
    </message>
    <message>
        <source>Ranges are of bare bones: they may be off by 5 degrees a joint, and soft tissue may lessen them.</source>
        <translation>范围仅取自裸骨：每个关节可能相差 5 度，软组织可能使其变小。</translation>
    </message>
    <message>
        <source>Not an engineering document; local codes and licensed practice decide.</source>
        <translation>并非工程文件；以当地规范和持证从业者的意见为准。</translation>
    </message>
    <message>
        <source>Sizes</source>
        <translation>尺寸</translation>
    </message>
    <message>
        <source>Assumptions</source>
        <translation>假设</translation>
    </message>
    <message>
        <source>Evidence and cautions</source>
        <translation>证据与提醒</translation>
    </message>
    <message>
        <source>%1   %2</source>
        <translation>%1   %2</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 / %2</translation>
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
        <source>these bones do not move against each other</source>
        <translation>这些骨骼之间没有相对运动</translation>
    </message>
    <message>
        <source>not judged: the facets of one bone are missing</source>
        <translation>未判定：一块骨骼缺少关节面</translation>
    </message>
    <message>
        <source>not judged: no facets and no typed limits</source>
        <translation>未判定：没有关节面，也没有给定限度</translation>
    </message>
    <message>
        <source>Head height and neck slope</source>
        <translation>头高与颈部坡度</translation>
    </message>
    <message>
        <source>Reach envelope</source>
        <translation>可达包络</translation>
    </message>
    <message>
        <source>Ranges of the column</source>
        <translation>脊柱的活动范围</translation>
    </message>
    <message>
        <source>Spread of the answer</source>
        <translation>答案的离散</translation>
    </message>
    <message>
        <source>Blood pressure</source>
        <translation>血压</translation>
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
        <source>The column of blood between heart and head.</source>
        <translation>心脏与头部之间的血柱。</translation>
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
        <source>Sculpting bones, %1 of %2</source>
        <translation>正在塑形骨骼，第 %1 块，共 %2 块</translation>
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
        <source>%1. Not an engineering document; local codes and licensed practice decide.</source>
        <translation>%1。并非工程文件；以当地规范和持证从业者的意见为准。</translation>
    </message>
    <message>
        <source>%1 not judged: %2</source>
        <translation>%1 未判定：%2</translation>
    </message>
    <message>
        <source>%1 near the edge: %2</source>
        <translation>%1 接近极限：%2</translation>
    </message>
    <message>
        <source>%1 supported: %2</source>
        <translation>%1 受支持：%2</translation>
    </message>
    <message>
        <source>%1 beyond: %2</source>
        <translation>%1 超出：%2</translation>
    </message>
    <message>
        <source>%1 can't be articulated: %2</source>
        <translation>%1 无法关节化：%2</translation>
    </message>
    <message>
        <source>%1 articulates roughly: its facets stay %2 off centre</source>
        <translation>%1 只能大致吻合：其关节面偏离中心 %2</translation>
    </message>
    <message>
        <source>the facets of %1 and %2 face the same way</source>
        <translation>%1 与 %2 的关节面朝向同一侧</translation>
    </message>
    <message>
        <source>no position within a right angle brings the facets of %1 and %2 together</source>
        <translation>在直角之内没有位置能使 %1 与 %2 的关节面相接</translation>
    </message>
    <message>
        <source>%1 enter each other by %2 (tolerated %3)</source>
        <translation>%1相互进入 %2（容许 %3）</translation>
    </message>
    <message>
        <source>%1 enters %2 by %3 (tolerated %4)</source>
        <translation>%1进入%2，深 %3（容许 %4）</translation>
    </message>
    <message>
        <source>contact: %1, %2</source>
        <translation>接触：%1，%2</translation>
    </message>
    <message>
        <source>facets share %1 left, %2 right (least %3)</source>
        <translation>关节面共有左 %1、右 %2（至少 %3）</translation>
    </message>
    <message>
        <source>facets share %1 left, %2 right of area (least %3)</source>
        <translation>关节面共有面积左 %1、右 %2（至少 %3）</translation>
    </message>
    <message>
        <source>facets press %1 left, %2 right into each other (tolerated %3)</source>
        <translation>关节面相互压入左 %1、右 %2（容许 %3）</translation>
    </message>
    <message>
        <source>facets gape %1 left, %2 right (tolerated %3)</source>
        <translation>关节面张开左 %1、右 %2（容许 %3）</translation>
    </message>
    <message>
        <source>%1 facets share %2 of area (least %3)</source>
        <translation>%1侧关节面共有面积 %2（至少 %3）</translation>
    </message>
    <message>
        <source>%1 facets share %2 (least %3)</source>
        <translation>%1侧关节面共有 %2（至少 %3）</translation>
    </message>
    <message>
        <source>%1 facets press %2 into each other (tolerated %3)</source>
        <translation>%1侧关节面相互压入 %2（容许 %3）</translation>
    </message>
    <message>
        <source>%1 facets gape %2 (tolerated %3)</source>
        <translation>%1侧关节面张开 %2（容许 %3）</translation>
    </message>
    <message>
        <source>facets share of area %1 left, %2 right</source>
        <translation>关节面共有面积左 %1、右 %2</translation>
    </message>
    <message>
        <source>facets share %1 left, %2 right</source>
        <translation>关节面共有左 %1、右 %2</translation>
    </message>
    <message>
        <source>facets share %1</source>
        <translation>关节面共有 %1</translation>
    </message>
    <message>
        <source> facets share %1</source>
        <translation> 侧关节面共有 %1</translation>
    </message>
    <message>
        <source>%1 facets press %2 into each other</source>
        <translation>%1侧关节面相互压入 %2</translation>
    </message>
    <message>
        <source>%1 facets gape %2</source>
        <translation>%1侧关节面张开 %2</translation>
    </message>
    <message>
        <source>%1 facets share %2</source>
        <translation>%1侧关节面共有 %2</translation>
    </message>
    <message>
        <source>nothing stops it within %1</source>
        <translation>在 %1 之内没有阻碍</translation>
    </message>
    <message>
        <source>limit %1 (%2)</source>
        <translation>限度 %1（%2）</translation>
    </message>
    <message>
        <source>%1, each supported by itself but not together</source>
        <translation>%1，各自受支持，但合在一起不受支持</translation>
    </message>
    <message>
        <source>%1, and the neutral pose is beyond as well</source>
        <translation>%1，且中性姿态也超出</translation>
    </message>
    <message>
        <source>%1 by itself</source>
        <translation>%1（单独）</translation>
    </message>
    <message>
        <source>%1 where %2 is the least</source>
        <translation>%1，而最小值为%2</translation>
    </message>
    <message>
        <source>%1, phalanx %2</source>
        <translation>%1，第 %2 指节</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1，%2</translation>
    </message>
    <message>
        <source>finger %1</source>
        <translation>第 %1 指</translation>
    </message>
    <message>
        <source>toe %1</source>
        <translation>第 %1 趾</translation>
    </message>
    <message>
        <source>dorsiflexion %1 of %2</source>
        <translation>背屈 %1，限度 %2</translation>
    </message>
    <message>
        <source>ventriflexion %1 of %2</source>
        <translation>腹屈 %1，限度 %2</translation>
    </message>
    <message>
        <source>left bend %1 of %2</source>
        <translation>左弯 %1，限度 %2</translation>
    </message>
    <message>
        <source>right bend %1 of %2</source>
        <translation>右弯 %1，限度 %2</translation>
    </message>
    <message>
        <source>left-up torsion %1 of %2</source>
        <translation>左侧抬起扭转 %1，限度 %2</translation>
    </message>
    <message>
        <source>right-up torsion %1 of %2</source>
        <translation>右侧抬起扭转 %1，限度 %2</translation>
    </message>
    <message>
        <source>dorsiflexion %1</source>
        <translation>背屈 %1</translation>
    </message>
    <message>
        <source>ventriflexion %1</source>
        <translation>腹屈 %1</translation>
    </message>
    <message>
        <source>left bend %1</source>
        <translation>左弯 %1</translation>
    </message>
    <message>
        <source>right bend %1</source>
        <translation>右弯 %1</translation>
    </message>
    <message>
        <source>left-up torsion %1</source>
        <translation>左侧抬起扭转 %1</translation>
    </message>
    <message>
        <source>right-up torsion %1</source>
        <translation>右侧抬起扭转 %1</translation>
    </message>
    <message>
        <source>flexion %1</source>
        <translation>屈曲 %1</translation>
    </message>
    <message>
        <source>extension %1</source>
        <translation>伸展 %1</translation>
    </message>
    <message>
        <source>abduction %1</source>
        <translation>外展 %1</translation>
    </message>
    <message>
        <source>adduction %1</source>
        <translation>内收 %1</translation>
    </message>
    <message>
        <source>opening %1</source>
        <translation>张开 %1</translation>
    </message>
    <message>
        <source>closing %1</source>
        <translation>闭合 %1</translation>
    </message>
    <message>
        <source>inward rotation %1</source>
        <translation>内旋 %1</translation>
    </message>
    <message>
        <source>outward rotation %1</source>
        <translation>外旋 %1</translation>
    </message>
    <message>
        <source>centra of %1 and %2</source>
        <translation>%1 与 %2 的椎体</translation>
    </message>
    <message>
        <source>spines of %1 and %2</source>
        <translation>%1 与 %2 的神经棘</translation>
    </message>
    <message>
        <source>arches of %1 and %2</source>
        <translation>%1 与 %2 的椎弓</translation>
    </message>
    <message>
        <source>ribs of %1 and %2</source>
        <translation>%1 与 %2 的肋骨</translation>
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
        <source>centrum of %1</source>
        <translation>%1 的椎体</translation>
    </message>
    <message>
        <source>spine of %1</source>
        <translation>%1 的神经棘</translation>
    </message>
    <message>
        <source>arch of %1</source>
        <translation>%1 的椎弓</translation>
    </message>
    <message>
        <source>rib of %1</source>
        <translation>%1 的肋骨</translation>
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
        <source>%1 and %2</source>
        <translation>%1与%2</translation>
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
        <source>cervical vertebra %1</source>
        <translation>第 %1 颈椎</translation>
    </message>
    <message>
        <source>dorsal vertebra %1</source>
        <translation>第 %1 背椎</translation>
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
        <source>carpal %1</source>
        <translation>第 %1 腕骨</translation>
    </message>
    <message>
        <source>metacarpal %1</source>
        <translation>第 %1 掌骨</translation>
    </message>
    <message>
        <source>metatarsal %1</source>
        <translation>第 %1 跖骨</translation>
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
        <source>the %1 planted feet</source>
        <translation>%1 只落地的脚</translation>
    </message>
    <message>
        <source>supported</source>
        <translation>受支持</translation>
    </message>
    <message>
        <source>near</source>
        <translation>接近极限</translation>
    </message>
    <message>
        <source>beyond</source>
        <translation>超出</translation>
    </message>
    <message>
        <source>both</source>
        <translation>两</translation>
    </message>
    <message>
        <source>in the neutral pose</source>
        <translation>在中性姿态下</translation>
    </message>
    <message>
        <source>all angles zero</source>
        <translation>全部角度为零</translation>
    </message>
    <message>
        <source>no facets and no typed limits</source>
        <translation>没有关节面，也没有给定限度</translation>
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
        <source>author's choice</source>
        <translation>作者的选择</translation>
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
        <source>left bend</source>
        <translation>左弯</translation>
    </message>
    <message>
        <source>right bend</source>
        <translation>右弯</translation>
    </message>
    <message>
        <source>left-up torsion</source>
        <translation>左侧抬起扭转</translation>
    </message>
    <message>
        <source>right-up torsion</source>
        <translation>右侧抬起扭转</translation>
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
        <source>torsion left</source>
        <translation>向左扭转</translation>
    </message>
    <message>
        <source>torsion right</source>
        <translation>向右扭转</translation>
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
        <source>atlas</source>
        <translation>寰椎</translation>
    </message>
    <message>
        <source>axis</source>
        <translation>枢椎</translation>
    </message>
    <message>
        <source>skull</source>
        <translation>头骨</translation>
    </message>
    <message>
        <source>lower jaw</source>
        <translation>下颌</translation>
    </message>
    <message>
        <source>shoulder blade</source>
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
        <source>spine fork</source>
        <translation>神经棘分叉</translation>
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
        <source>postzyg length</source>
        <translation>后关节突长</translation>
    </message>
    <message>
        <source>facet turn</source>
        <translation>关节面转角</translation>
    </message>
    <message>
        <source>wedge</source>
        <translation>楔角</translation>
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
        <source>circumference</source>
        <translation>周长</translation>
    </message>
    <message>
        <source>found, deformed</source>
        <translation>已发现，已变形</translation>
    </message>
    <message>
        <source>scaled from another</source>
        <translation>由另一标本按比例</translation>
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
        <source>the one planted foot</source>
        <translation>唯一落地的脚</translation>
    </message>
    <message>
        <source>the tail</source>
        <translation>尾部</translation>
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
        <source>Nothing touches the ground: no balance to tell.</source>
        <translation>没有任何部分接触地面：无平衡可言。</translation>
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
        <source>Juvenile giraffe</source>
        <translation>幼年长颈鹿</translation>
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
        <source>cannot save %1: %7; %8</source>
        <translation>无法保存 %1：%7；%8</translation>
    </message>
    <message>
        <source>cannot save: %7 is not a finite number</source>
        <translation>无法保存：%7不是有限数</translation>
    </message>
    <message>
        <source>cannot open %1: %7</source>
        <translation>无法打开 %1：%7</translation>
    </message>
    <message>
        <source>cannot read %1: %7</source>
        <translation>无法读取 %1：%7</translation>
    </message>
    <message>
        <source>cannot export to %1: %7</source>
        <translation>无法导出到 %1：%7</translation>
    </message>
    <message>
        <source>cannot make the folder %1: %7</source>
        <translation>无法建立文件夹 %1：%7</translation>
    </message>
    <message>
        <source>the folder %1 cannot be written; choose another one or change its rights</source>
        <translation>无法写入文件夹 %1；请另选一个或更改其权限</translation>
    </message>
    <message>
        <source>%1 stays as sculpted, its scan %2 cannot be used: %7</source>
        <translation>%1 保持塑形的样子，它的扫描 %2 无法使用：%7</translation>
    </message>
    <message>
        <source>its JSON:%2, column %3: %7; the file is damaged or was edited by hand</source>
        <translation>它的 JSON，第 %2 行第 %3 列：%7；文件已损坏或被手工改过</translation>
    </message>
    <message>
        <source>its JSON:%2, column %3, %4: %7</source>
        <translation>它的 JSON，第 %2 行第 %3 列，%4：%7</translation>
    </message>
    <message>
        <source>its JSON:%2, column %3: %7</source>
        <translation>它的 JSON，第 %2 行第 %3 列：%7</translation>
    </message>
    <message>
        <source>%1:%2, column %3, %4: %7</source>
        <translation>%1:%2，第 %3 列，%4：%7</translation>
    </message>
    <message>
        <source>%1:%2, column %3: %7; the file is damaged or was edited by hand</source>
        <translation>%1:%2，第 %3 列：%7；文件已损坏或被手工改过</translation>
    </message>
    <message>
        <source>%1:%2, column %3: %7</source>
        <translation>%1:%2，第 %3 列：%7</translation>
    </message>
    <message>
        <source>%1 cannot be read (%7); check that it is still there</source>
        <translation>无法读取 %1（%7）；请检查它是否还在</translation>
    </message>
    <message>
        <source>%1 is too large for a measurement table; choose a CSV file</source>
        <translation>%1 太大，不会是测量表；请选择 CSV 文件</translation>
    </message>
    <message>
        <source>%1 cannot be opened; check that you may read it</source>
        <translation>无法打开 %1；请检查您是否有权读取</translation>
    </message>
    <message>
        <source>%1: a figure is written as svg, pdf or png, numbers as json</source>
        <translation>%1：图写成 svg、pdf 或 png，数值写成 json</translation>
    </message>
    <message>
        <source>the name of the file is missing</source>
        <translation>缺少文件名</translation>
    </message>
    <message>
        <source>add a name after the folder</source>
        <translation>请在文件夹之后加上名称</translation>
    </message>
    <message>
        <source>there is no folder %1</source>
        <translation>没有文件夹 %1</translation>
    </message>
    <message>
        <source>make the folder first or choose another one</source>
        <translation>请先建立该文件夹，或另选一个</translation>
    </message>
    <message>
        <source>%1 is a file, not a folder</source>
        <translation>%1 是文件，不是文件夹</translation>
    </message>
    <message>
        <source>choose a folder</source>
        <translation>请选择文件夹</translation>
    </message>
    <message>
        <source>this is the name of a folder</source>
        <translation>这是文件夹的名称</translation>
    </message>
    <message>
        <source>choose another name</source>
        <translation>请另取一个名称</translation>
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
        <source>choose another folder</source>
        <translation>请另选文件夹</translation>
    </message>
    <message>
        <source>make room or choose another folder; the old file, if any, is untouched</source>
        <translation>请腾出空间或另选文件夹；原有文件（若有）未受影响</translation>
    </message>
    <message>
        <source>make room or choose another folder</source>
        <translation>请腾出空间或另选文件夹</translation>
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
        <source>there is not enough memory for %1 x %2 pixels; choose a smaller width</source>
        <translation>内存不足以容纳 %1 x %2 像素；请选择较小的宽度</translation>
    </message>
    <message>
        <source>there is not enough memory for %1; choose a smaller width or fewer passes</source>
        <translation>内存不足以容纳 %1；请选择较小的宽度或较少的分层图</translation>
    </message>
    <message>
        <source>the ending must be .glb, .gltf, .obj, .ply, .stl or .dae</source>
        <translation>扩展名必须是 .glb、.gltf、.obj、.ply、.stl 或 .dae</translation>
    </message>
    <message>
        <source>there are no bone meshes yet</source>
        <translation>还没有骨骼网格</translation>
    </message>
    <message>
        <source>%7, found "%1"</source>
        <translation>%7，但这里是“%1”</translation>
    </message>
    <message>
        <source>%7, but the file ends here</source>
        <translation>%7，但文件到此为止</translation>
    </message>
    <message>
        <source>expected a list of %1 %7, found %8</source>
        <translation>此处应为由 %1 个%7组成的列表，但这里是 %8</translation>
    </message>
    <message>
        <source>expected [value, origin] or [value, origin, rule]</source>
        <translation>此处应为 [value, origin] 或 [value, origin, rule]</translation>
    </message>
    <message>
        <source>expected ',' or '}' after a member</source>
        <translation>成员之后应为“,”或“}”</translation>
    </message>
    <message>
        <source>expected ':' after the key</source>
        <translation>键之后应为“:”</translation>
    </message>
    <message>
        <source>expected ',' or ']' after an item</source>
        <translation>列表项之后应为“,”或“]”</translation>
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
        <source>expected %7, found %8</source>
        <translation>此处应为%7，但这里是%8</translation>
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
        <source>true or false</source>
        <translation>true 或 false</translation>
    </message>
    <message>
        <source>a number</source>
        <translation>一个数</translation>
    </message>
    <message>
        <source>a whole number</source>
        <translation>一个整数</translation>
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
        <source>a number is too large</source>
        <translation>有一个数太大</translation>
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
        <source>"%1" is not among %2</source>
        <translation>“%1”不在 %2 之中</translation>
    </message>
    <message>
        <source>"%1" is not known here</source>
        <translation>这里不认识“%1”</translation>
    </message>
    <message>
        <source>must not be negative</source>
        <translation>不能为负</translation>
    </message>
    <message>
        <source>must be 0 or from %1 to %2</source>
        <translation>必须是 0，或在 %1 到 %2 之间</translation>
    </message>
    <message>
        <source>must be from %1 to %2</source>
        <translation>必须在 %1 到 %2 之间</translation>
    </message>
    <message>
        <source>must be above zero</source>
        <translation>必须大于零</translation>
    </message>
    <message>
        <source>must be more than 0</source>
        <translation>必须大于 0</translation>
    </message>
    <message>
        <source>must be "at least" or "at most"</source>
        <translation>必须是“at least”或“at most”</translation>
    </message>
    <message>
        <source>must be of length 1</source>
        <translation>长度必须为 1</translation>
    </message>
    <message>
        <source>must lie in the facet's plane</source>
        <translation>必须位于关节面的平面内</translation>
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
        <source>"%1" is no kind of claim; there are %2</source>
        <translation>“%1”不是一种论断；可用的有 %2</translation>
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
        <source>these rows are not a rotation</source>
        <translation>这几行不是旋转</translation>
    </message>
    <message>
        <source>these rows turn space inside out or press it flat</source>
        <translation>这几行会把空间翻转或压平</translation>
    </message>
    <message>
        <source>an outline needs at least three corners</source>
        <translation>轮廓至少需要三个角点</translation>
    </message>
    <message>
        <source>this bone has two scans</source>
        <translation>这块骨骼有两个扫描</translation>
    </message>
    <message>
        <source>the specimen has no joint of this name</source>
        <translation>标本没有这个名称的关节</translation>
    </message>
    <message>
        <source>the specimen has no joint "%1"</source>
        <translation>标本没有关节“%1”</translation>
    </message>
    <message>
        <source>the specimen has no %1</source>
        <translation>标本没有 %1</translation>
    </message>
    <message>
        <source>this joint is named twice</source>
        <translation>这个关节写了两次</translation>
    </message>
    <message>
        <source>the table is not complete: %7</source>
        <translation>表不完整：%7</translation>
    </message>
    <message>
        <source>the table has no row for %1</source>
        <translation>表中没有 %1 的行</translation>
    </message>
    <message>
        <source>%1: '%2' has not been filled</source>
        <translation>%1：“%2”没有填写</translation>
    </message>
    <message>
        <source>%1 has grown into %2</source>
        <translation>%1 已与 %2 愈合</translation>
    </message>
    <message>
        <source>a shoulder blade needs a dorsal vertebra (D1 to D3) to hang from</source>
        <translation>肩胛骨需要一节背椎（D1 至 D3）来悬挂</translation>
    </message>
    <message>
        <source>a pelvis needs the sacral vertebra S%1</source>
        <translation>骨盆需要荐椎 S%1</translation>
    </message>
    <message>
        <source>a skull needs an atlas (C1) to sit on</source>
        <translation>头骨需要寰椎（C1）来承托</translation>
    </message>
    <message>
        <source>the value of a claim on %7 must be from %1 to %2</source>
        <translation>关于%7的论断，其数值必须在 %1 到 %2 之间</translation>
    </message>
    <message>
        <source>the distance ahead must be from %1 to %2</source>
        <translation>向前的距离必须在 %1 到 %2 之间</translation>
    </message>
    <message>
        <source>a claim on %7 cannot be an "at most"</source>
        <translation>关于%7的论断不能是“至多”</translation>
    </message>
    <message>
        <source>head height</source>
        <translation>头高</translation>
    </message>
    <message>
        <source>neck slope</source>
        <translation>颈部坡度</translation>
    </message>
    <message>
        <source>neck base slope</source>
        <translation>颈基部坡度</translation>
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
        <source>a footprint</source>
        <translation>一个足迹</translation>
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
        <source>no folder for a moment in %1</source>
        <translation>无法在 %1 中建立临时文件夹</translation>
    </message>
    <message>
        <source>reading it takes longer than the %1 seconds allowed</source>
        <translation>读取它所需的时间超过允许的 %1 秒</translation>
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
        <source>it is damaged, or of a kind that is not understood: the process that read it broke down (SIG%1); nothing else is harmed</source>
        <translation>它已损坏，或是无法理解的类型：读取它的进程中途崩溃（SIG%1）；其他一切未受影响</translation>
    </message>
    <message>
        <source>reading it needs more memory than the %1 allowed</source>
        <translation>读取它所需的内存超过允许的 %1</translation>
    </message>
    <message>
        <source>the process that read it ended with code %1</source>
        <translation>读取它的进程以代码 %1 结束</translation>
    </message>
    <message>
        <source>none of its triangles can be used</source>
        <translation>它的三角形都不能用</translation>
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
        <source>it does not lie in the folder of the scans</source>
        <translation>它不在扫描文件夹中</translation>
    </message>
    <message>
        <source>it has been changed since</source>
        <translation>它后来被改动过</translation>
    </message>
    <message>
        <source>there is no surface in it</source>
        <translation>其中没有表面</translation>
    </message>
    <message>
        <source>there is no room for it in %1</source>
        <translation>%1 中没有放它的空间</translation>
    </message>
    <message>
        <source>it is in no mesh format that is read here</source>
        <translation>它不是这里能读的网格格式</translation>
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
        <source>its header gives '%1' as the number of %7</source>
        <translation>它的文件头把“%1”写作%7的数目</translation>
    </message>
    <message>
        <source>it declares %1 %7, which need at least %2 bytes each, but only %3 bytes are left for them: it is damaged or cut short</source>
        <translation>它声明有 %1 个%7，每个至少需要 %2 字节，但只剩 %3 字节：它已损坏或不完整</translation>
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
        <source>its JSON is no glTF document</source>
        <translation>它的 JSON 不是 glTF 文档</translation>
    </message>
    <message>
        <source>its JSON is cut short</source>
        <translation>它的 JSON 不完整</translation>
    </message>
    <message>
        <source>its meshes are compressed (%1), which is not read here; export it without compression</source>
        <translation>它的网格是压缩的（%1），这里不能读；请不压缩地导出</translation>
    </message>
    <message>
        <source>it says it is %1 bytes long, but has %2: it is cut short</source>
        <translation>它自称长 %1 字节，实有 %2：它不完整</translation>
    </message>
    <message>
        <source>%1 elements</source>
        <translation>%1 元素</translation>
    </message>
    <message>
        <source>vertex</source>
        <translation>顶点</translation>
    </message>
    <message>
        <source>face</source>
        <translation>面</translation>
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
        <source>%1 is a paired bone and has no mid-plane</source>
        <translation>%1 是成对的骨骼，没有中矢面</translation>
    </message>
    <message>
        <source>%1 does not lie by its landmarks yet, so that its mid-plane is not known</source>
        <translation>%1 还没有按标志点摆放，因此中矢面未知</translation>
    </message>
    <message>
        <source>an animal can only be scaled by more than 0</source>
        <translation>动物只能按大于 0 的倍数缩放</translation>
    </message>
    <message>
        <source>a bone can only be scaled by more than 0</source>
        <translation>骨骼只能按大于 0 的倍数缩放</translation>
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
        <source>the patch is flat: no sphere goes through it</source>
        <translation>所刷的面是平的：没有球面能通过它</translation>
    </message>
    <message>
        <source>nothing has been brushed</source>
        <translation>还没有刷任何地方</translation>
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
        <source>none of the bones has a closed surface</source>
        <translation>没有一块骨骼有封闭的曲面</translation>
    </message>
    <message>
        <source>the ray tracer cannot start on this processor</source>
        <translation>光线追踪无法在此处理器上启动</translation>
    </message>
    <message>
        <source>a sheet ends in .pdf, .svg or .png</source>
        <translation>图纸的扩展名是 .pdf、.svg 或 .png</translation>
    </message>
    <message>
        <source>the page could not be made</source>
        <translation>无法生成页面</translation>
    </message>
    <message>
        <source>the page could not be written as PNG</source>
        <translation>无法把页面写成 PNG</translation>
    </message>
    <message>
        <source>the two have different joints: %1 in the first, %2 in the second</source>
        <translation>两者的关节不同：前者有 %1，后者有 %2</translation>
    </message>
    <message>
        <source>the specimen has no skull whose snout could reach anything</source>
        <translation>标本没有头骨，也就没有可以够到东西的吻端</translation>
    </message>
    <message>
        <source>the specimen has no skull to carry blood to</source>
        <translation>标本没有需要供血的头骨</translation>
    </message>
    <message>
        <source>the specimen has no dorsal vertebrae to place a heart under</source>
        <translation>标本没有可在其下放置心脏的背椎</translation>
    </message>
    <message>
        <source>the specimen has no neck that moves</source>
        <translation>标本没有能活动的颈部</translation>
    </message>
    <message>
        <source>'%1' is no body plan</source>
        <translation>“%1”不是体型方案</translation>
    </message>
    <message>
        <source>'%1' %2 cannot be</source>
        <translation>%2不能是“%1”</translation>
    </message>
    <message>
        <source>write a whole number from %1 to %2</source>
        <translation>请写 %1 到 %2 之间的整数</translation>
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
        <source>a second column for '%1'</source>
        <translation>“%1”有第二列</translation>
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
        <source>write '%1', '%2' or '%3'</source>
        <translation>请写“%1”、“%2”或“%3”</translation>
    </message>
    <message>
        <source>write '%1'</source>
        <translation>请写“%1”</translation>
    </message>
    <message>
        <source>write %1 (mm), (cm) or (m)</source>
        <translation>请写 %1 (mm)、(cm) 或 (m)</translation>
    </message>
    <message>
        <source>%1 cells under %2 titles</source>
        <translation>%2 个标题下有 %1 个单元格</translation>
    </message>
    <message>
        <source>'%1' is no bone</source>
        <translation>“%1”不是骨骼</translation>
    </message>
    <message>
        <source>there is no bone '%1'</source>
        <translation>没有骨骼“%1”</translation>
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
        <source>write a number in %1, or leave the cell blank when it is not known</source>
        <translation>请写以 %1 为单位的数字，未知时留空</translation>
    </message>
    <message>
        <source>%1 is not a length</source>
        <translation>%1 不是长度</translation>
    </message>
    <message>
        <source>%1 is no distance</source>
        <translation>%1 不是距离</translation>
    </message>
    <message>
        <source>%1 is more than 20 m</source>
        <translation>%1 超过 20 m</translation>
    </message>
    <message>
        <source>'%1' is more than a kilometre away</source>
        <translation>“%1”远在一公里之外</translation>
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
        <source>correct the number of the bone or the line '%1'</source>
        <translation>请更正骨骼编号，或更正“%1”这一行</translation>
    </message>
    <message>
        <source>an animal with these counts has no %1</source>
        <translation>按这些椎骨数目，没有 %1</translation>
    </message>
    <message>
        <source>%1 has '%2' twice</source>
        <translation>%1 的“%2”出现两次</translation>
    </message>
    <message>
        <source>the column '%1' is not used</source>
        <translation>“%1”列未被使用</translation>
    </message>
    <message>
        <source>'%1' does not tell left from right</source>
        <translation>“%1”分不出左右</translation>
    </message>
    <message>
        <source>no three prints can lie %1, %2 and %3 cm apart</source>
        <translation>没有三个足迹能相距 %1、%2 和 %3 cm</translation>
    </message>
    <message>
        <source>%1 and %2 follow each other on the same side</source>
        <translation>%1 与 %2 在同一侧相继出现</translation>
    </message>
    <message>
        <source>check whether a print between them is missing; the distances of %1 reach over it</source>
        <translation>请检查两者之间是否缺了足迹；%1 的距离跨过了它</translation>
    </message>
    <message>
        <source>the pace %1 cm differs from the next pace of %2, %3 cm</source>
        <translation>步距 %1 cm 与 %2 的下一步距 %3 cm 不符</translation>
    </message>
    <message>
        <source>The prints after %1 can't be laid: %2 is unknown.</source>
        <translation>%1 之后的足迹无法排布：%2未知。</translation>
    </message>
    <message>
        <source>The prints after %1 can't be laid: %2 are unknown.</source>
        <translation>%1 之后的足迹无法排布：%2未知。</translation>
    </message>
    <message>
        <source>'%1' can't be laid: its side is unknown.</source>
        <translation>“%1”无法排布：不知其左右。</translation>
    </message>
    <message>
        <source>%1: no print</source>
        <translation>%1：没有足迹</translation>
    </message>
    <message>
        <source>%1 on %2 (%3 mm)</source>
        <translation>%1踏在 %2 上（%3 mm）</translation>
    </message>
    <message>
        <source>%1 %2 mm ahead of and %3 mm left of %4</source>
        <translation>%1在 %4 前 %2 mm、左 %3 mm</translation>
    </message>
    <message>
        <source>%1 %2 mm ahead of and %3 mm right of %4</source>
        <translation>%1在 %4 前 %2 mm、右 %3 mm</translation>
    </message>
    <message>
        <source>%1 %2 mm behind and %3 mm left of %4</source>
        <translation>%1在 %4 后 %2 mm、左 %3 mm</translation>
    </message>
    <message>
        <source>%1 %2 mm behind and %3 mm right of %4</source>
        <translation>%1在 %4 后 %2 mm、右 %3 mm</translation>
    </message>
    <message>
        <source>%1 %2 mm ahead of %3</source>
        <translation>%1在 %3 前 %2 mm</translation>
    </message>
    <message>
        <source>%1 %2 mm behind %3</source>
        <translation>%1在 %3 后 %2 mm</translation>
    </message>
    <message>
        <source>%1 %2 mm left of %3</source>
        <translation>%1在 %3 左 %2 mm</translation>
    </message>
    <message>
        <source>%1 %2 mm right of %3</source>
        <translation>%1在 %3 右 %2 mm</translation>
    </message>
    <message>
        <source>write 'high browser' or 'low browser'</source>
        <translation>请写“high browser”或“low browser”</translation>
    </message>
    <message>
        <source>the table is empty</source>
        <translation>表格是空的</translation>
    </message>
    <message>
        <source>write a header line such as 'bone,length (mm)' and one row a bone</source>
        <translation>请写一行标题，例如“bone,length (mm)”，每块骨一行</translation>
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
        <source>remove the surplus cells, or write numbers with a decimal point</source>
        <translation>请删去多余的单元格，或用小数点写数字</translation>
    </message>
    <message>
        <source>a row without a bone</source>
        <translation>有一行没有骨骼</translation>
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
        <source>write a length above zero, or leave the cell blank when it is not known</source>
        <translation>请写大于零的长度，未知时留空</translation>
    </message>
    <message>
        <source>check the unit in the header</source>
        <translation>请检查标题中的单位</translation>
    </message>
    <message>
        <source>check the unit</source>
        <translation>请检查单位</translation>
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
        <source>check length and cotyle height for a slip of the decimal point</source>
        <translation>请检查长度和关节窝高的小数点是否错位</translation>
    </message>
    <message>
        <source>it is kept in no file</source>
        <translation>它不会存入文件</translation>
    </message>
    <message>
        <source>write the region's total length</source>
        <translation>请写该区段的总长</translation>
    </message>
    <message>
        <source>correct the id, or the counts in the lines that start with #</source>
        <translation>请更正编号，或更正以 # 开头的行中的数目</translation>
    </message>
    <message>
        <source>there is no header</source>
        <translation>没有标题行</translation>
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
        <source>the landmark has no name</source>
        <translation>标志点没有名称</translation>
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
        <source>leave one of them out</source>
        <translation>请去掉其中之一</translation>
    </message>
    <message>
        <source>no footprint stands below the header</source>
        <translation>标题行下没有足迹</translation>
    </message>
    <message>
        <source>write one row a print</source>
        <translation>请每个足迹写一行</translation>
    </message>
    <message>
        <source>there is no column of distances</source>
        <translation>没有距离列</translation>
    </message>
    <message>
        <source>write a header line 'foot,pace_cm,next_pace_cm,stride_cm,length_cm' and one row a print</source>
        <translation>请写标题行“foot,pace_cm,next_pace_cm,stride_cm,length_cm”，每个足迹一行</translation>
    </message>
    <message>
        <source>nothing need be done</source>
        <translation>无需处理</translation>
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
        <source>write a name such as LP1 or 'right fore' if the prints shall lie on the ground</source>
        <translation>若要把足迹排在地面上，请写 LP1 或“right fore”之类的名称</translation>
    </message>
    <message>
        <source>check the paces and the stride; the longest must be less than the other two together</source>
        <translation>请检查步距与复步长；最长的必须小于另两者之和</translation>
    </message>
    <message>
        <source>check both; each row is reckoned with its own</source>
        <translation>请两处都检查；各行按自己的数值计算</translation>
    </message>
    <message>
        <source>its pace</source>
        <translation>其步距</translation>
    </message>
    <message>
        <source>its next pace and stride, or its gauge</source>
        <translation>其下一步距与复步长，或行迹宽</translation>
    </message>
    <message>
        <source>the stride before it, or its gauge</source>
        <translation>其前的复步长，或行迹宽</translation>
    </message>
    <message>
        <source>A print without a name can't be laid: its side is unknown.</source>
        <translation>没有名称的足迹无法排布：不知其左右。</translation>
    </message>
    <message>
        <source>cervicals</source>
        <translation>颈椎</translation>
    </message>
    <message>
        <source>dorsals</source>
        <translation>背椎</translation>
    </message>
    <message>
        <source>sacrals</source>
        <translation>荐椎</translation>
    </message>
    <message>
        <source>caudals</source>
        <translation>尾椎</translation>
    </message>
    <message>
        <source>%1, column %2</source>
        <translation>%1，第 %2 列</translation>
    </message>
    <message>
        <source>%1: %2; %3</source>
        <translation>%1：%2；%3</translation>
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
        <source>Pose</source>
        <translation>姿态</translation>
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
        <source>the neck's base</source>
        <translation>颈根</translation>
    </message>
    <message>
        <source>the tail's base</source>
        <translation>尾根</translation>
    </message>
    <message>
        <source>%1 ahead of %2</source>
        <translation>%2之前 %1</translation>
    </message>
    <message>
        <source>%1 behind %2</source>
        <translation>%2之后 %1</translation>
    </message>
    <message>
        <source> and %1 to the left</source>
        <translation> 并向左 %1</translation>
    </message>
    <message>
        <source> and %1 to the right</source>
        <translation> 并向右 %1</translation>
    </message>
    <message>
        <source>Neck at its %1 limit</source>
        <translation>颈部处于%1极限</translation>
    </message>
    <message>
        <source>Tail at its %1 limit</source>
        <translation>尾部处于%1极限</translation>
    </message>
    <message>
        <source>%1 at %2, %3; %4 joints turn %5 together</source>
        <translation>%1在 %2，%3；%4 个关节共转动 %5</translation>
    </message>
    <message>
        <source>snout</source>
        <translation>吻端</translation>
    </message>
    <message>
        <source>tip</source>
        <translation>尾端</translation>
    </message>
    <message>
        <source>, %1 of them not judged</source>
        <translation>，其中 %1 个未判定</translation>
    </message>
    <message>
        <source>; part of it would be %1 in the ground</source>
        <translation>；有一部分会没入地面 %1</translation>
    </message>
    <message>
        <source>Keep the limits of neck and tail</source>
        <translation>保存颈部与尾部的极限</translation>
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
        <source>and %1 joints more</source>
        <translation>以及另外 %1 个关节</translation>
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
        <source>The bones are being asked.</source>
        <translation>正在询问骨骼。</translation>
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
        <source>The published rule counts the facet's length (Cobley, Rayfield &amp; Barrett 2013); area is the stricter reading at the same share</source>
        <translation>已发表的规则按关节面的长度计（Cobley, Rayfield &amp; Barrett 2013）；同一份额下，按面积是更严格的解读</translation>
    </message>
    <message>
        <source>Overlap by length or area</source>
        <translation>重叠按长度或按面积</translation>
    </message>
    <message>
        <source>Facets must overlap</source>
        <translation>关节面必须重叠</translation>
    </message>
    <message>
        <source>At least</source>
        <translation>至少</translation>
    </message>
    <message>
        <source>Share of the facet that must stay covered</source>
        <translation>关节面必须保持被覆盖的份额</translation>
    </message>
    <message>
        <source>Least overlap</source>
        <translation>最小重叠</translation>
    </message>
    <message>
        <source>Least overlap %1</source>
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
        <source>Neck as in…</source>
        <translation>颈部取自……</translation>
    </message>
    <message>
        <source>Thickness found or argued for in other animals, each with its source</source>
        <translation>在其他动物中发现或论证的厚度，各附出处</translation>
    </message>
    <message>
        <source>%1: %2 %</source>
        <translation>%1：%2 %</translation>
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
        <source>Pressing</source>
        <translation>压入</translation>
    </message>
    <message>
        <source>Share of the facet's length by which facets may enter each other. Author's choice</source>
        <translation>关节面可相互压入其长度的份额。作者的选择</translation>
    </message>
    <message>
        <source>Tolerated facet pressure</source>
        <translation>容许的关节面压入</translation>
    </message>
    <message>
        <source>Gaping</source>
        <translation>张开</translation>
    </message>
    <message>
        <source>Share of the facet's length by which facets may stand apart. Author's choice</source>
        <translation>关节面可分开其长度的份额。作者的选择</translation>
    </message>
    <message>
        <source>Tolerated facet gap</source>
        <translation>容许的关节面间隙</translation>
    </message>
    <message>
        <source>Touching</source>
        <translation>接触</translation>
    </message>
    <message>
        <source>Depth by which bones may enter each other away from their joint. Author's choice</source>
        <translation>骨骼在关节以外可相互进入的深度。作者的选择</translation>
    </message>
    <message>
        <source>Tolerated contact</source>
        <translation>容许的接触</translation>
    </message>
    <message>
        <source>Near edge</source>
        <translation>接近极限</translation>
    </message>
    <message>
        <source>How close to a limit counts as near, as a share of the range. Author's choice</source>
        <translation>离限度多近算作接近，以范围的份额计。作者的选择</translation>
    </message>
    <message>
        <source>Near margin</source>
        <translation>接近的余量</translation>
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
        <source>Hulls around the bones × 1.21 × density; %1</source>
        <translation>骨骼外包络 × 1.21 × 密度；%1</translation>
    </message>
    <message>
        <source>From humerus and femur, %1; mean error 25.63 %</source>
        <translation>由肱骨与股骨得出，%1；平均误差 25.63 %</translation>
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
        <source>%1 m over the ground</source>
        <translation>离地 %1 米</translation>
    </message>
    <message>
        <source>%1 % of the weight</source>
        <translation>体重的 %1 %</translation>
    </message>
    <message>
        <source>not told by mechanics alone</source>
        <translation>仅凭力学无法得知</translation>
    </message>
    <message>
        <source>%1 × %2 mm, residual %3</source>
        <translation>%1 × %2 毫米，残差 %3</translation>
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
        <source>%1: %2.</source>
        <translation>%1：%2。</translation>
    </message>
    <message>
        <source>The centre is only known to %1: brush more of the curve.</source>
        <translation>中心只知道到 %1：请多刷一些曲面。</translation>
    </message>
    <message>
        <source>Centre known to %1; %2.</source>
        <translation>中心知道到 %1；%2。</translation>
    </message>
    <message>
        <source>the surface is hollow</source>
        <translation>表面凹陷</translation>
    </message>
    <message>
        <source>the surface bulges</source>
        <translation>表面凸起</translation>
    </message>
    <message>
        <source>%1 % of what was brushed does not lie in the facet's plane and was left out.</source>
        <translation>所刷部分有 %1 % 不在关节面的平面内，已略去。</translation>
    </message>
    <message>
        <source>Mark the %1 of %2</source>
        <translation>标记 %2 的%1</translation>
    </message>
    <message>
        <source>Take the %1 of %2 away</source>
        <translation>移除 %2 的%1</translation>
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
        <source>Bone on the bench</source>
        <translation>工作台上的骨骼</translation>
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
        <source>Straighten</source>
        <translation>矫正</translation>
    </message>
    <message>
        <source>Undoes what bent the bone after death, going by its paired marks; the original is kept</source>
        <translation>按成对标记消除骨骼死后的弯曲；保留原件</translation>
    </message>
    <message>
        <source>Measures</source>
        <translation>量度</translation>
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
        <source>table: blank</source>
        <translation>表中：空白</translation>
    </message>
    <message>
        <source>table: %1</source>
        <translation>表中：%1</translation>
    </message>
    <message>
        <source>table: %1, inferred</source>
        <translation>表中：%1，推断</translation>
    </message>
    <message>
        <source>%1 of %2 into the table</source>
        <translation>%2 的%1写入测量表</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1：%2</translation>
    </message>
    <message>
        <source>Undo a shear of %1</source>
        <translation>消除 %1 的剪切</translation>
    </message>
    <message>
        <source>Undo a squash of %1 %</source>
        <translation>消除 %1 % 的挤压</translation>
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
        <source>Landmarks out</source>
        <translation>导出标志点</translation>
    </message>
    <message>
        <source>Landmarks in</source>
        <translation>导入标志点</translation>
    </message>
    <message>
        <source>Landmark tables (*.csv)</source>
        <translation>标志点表 (*.csv)</translation>
    </message>
    <message>
        <source>%1 has no landmark of a bone that was brought in.</source>
        <translation>%1 中没有已导入骨骼的标志点。</translation>
    </message>
    <message>
        <source>Landmarks from %1</source>
        <translation>来自 %1 的标志点</translation>
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
        <source>Bench</source>
        <translation>工作台</translation>
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
        <source>Frame the bone</source>
        <translation>显示该骨骼</translation>
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
        <source>What its joints still lack</source>
        <translation>其关节仍缺少的</translation>
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
        <source>Take away</source>
        <translation>擦去</translation>
    </message>
    <message>
        <source>Mirror this one</source>
        <translation>镜像此项</translation>
    </message>
    <message>
        <source>Mirror all across</source>
        <translation>全部镜像到对侧</translation>
    </message>
    <message>
        <source>Makes the missing partner of every mark, across the mid-plane of the bone</source>
        <translation>跨骨骼的中矢面补出每个标记缺少的对应者</translation>
    </message>
    <message>
        <source>Landmarks in…</source>
        <translation>导入标志点……</translation>
    </message>
    <message>
        <source>Landmarks out…</source>
        <translation>导出标志点……</translation>
    </message>
    <message>
        <source>Bench: %1</source>
        <translation>工作台：%1</translation>
    </message>
    <message>
        <source>Preparing the bone</source>
        <translation>正在准备骨骼</translation>
    </message>
    <message>
        <source>needed</source>
        <translation>需要</translation>
    </message>
    <message>
        <source>if you like</source>
        <translation>可选</translation>
    </message>
    <message>
        <source>The bone lies by a guess: its landmarks do not suffice yet.</source>
        <translation>骨骼按猜测放置：其标志点尚不足。</translation>
    </message>
    <message>
        <source>%1 can be judged.</source>
        <translation>%1 可以判定。</translation>
    </message>
    <message>
        <source>%1 lacks %2</source>
        <translation>%1 缺少 %2</translation>
    </message>
    <message>
        <source>Source</source>
        <translation>出处</translation>
    </message>
    <message>
        <source>source</source>
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
        <source>Evidence of %1</source>
        <translation>%1 的证据</translation>
    </message>
    <message>
        <source>Source of %1</source>
        <translation>%1 的出处</translation>
    </message>
    <message>
        <source>%1 of %2 found</source>
        <translation>%2 块中发现 %1 块</translation>
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
        <source>%1 of %2 bones found (%3 %); with their mirror images %4 (%5 %)</source>
        <translation>%2 块骨骼中发现 %1 块（%3 %）；连同镜像为 %4 块（%5 %）</translation>
    </message>
    <message>
        <source> (%1)</source>
        <translation>（%1）</translation>
    </message>
    <message>
        <source>, grown into %1</source>
        <translation>，与 %1 愈合</translation>
    </message>
    <message>
        <source>Bring in bones</source>
        <translation>导入骨骼</translation>
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
        <source>What came of it</source>
        <translation>结果</translation>
    </message>
    <message>
        <source>Files to bring in</source>
        <translation>要导入的文件</translation>
    </message>
    <message>
        <source>Files read</source>
        <translation>已读取的文件</translation>
    </message>
    <message>
        <source>Put in place</source>
        <translation>放置到位</translation>
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
        <source>Leave out</source>
        <translation>略去</translation>
    </message>
    <message>
        <source>Takes the chosen files out of the list, also while they are being read  (Del)</source>
        <translation>将所选文件移出列表，读取期间也可以  (Del)</translation>
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
        <source>Reading, %1 %</source>
        <translation>正在读取，%1 %</translation>
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
        <source>%1 of %2 can be put in place; the others are left out.</source>
        <translation>%2 个中有 %1 个可以放置；其余略去。</translation>
    </message>
    <message>
        <source>It can be put in place.</source>
        <translation>可以放置。</translation>
    </message>
    <message>
        <source>All %1 can be put in place.</source>
        <translation>全部 %1 个都可以放置。</translation>
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
        <source>Percent of the centrum's functional length, or millimetres</source>
        <translation>椎体功能长度的百分比，或毫米</translation>
    </message>
    <message>
        <source>A claim cannot be answered: %1.</source>
        <translation>某项论断无法回答：%1。</translation>
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
        <source>at least</source>
        <translation>至少</translation>
    </message>
    <message>
        <source>at most</source>
        <translation>至多</translation>
    </message>
    <message>
        <source>m</source>
        <translation>米</translation>
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
        <source>being asked</source>
        <translation>正在询问</translation>
    </message>
    <message>
        <source>not answered</source>
        <translation>未回答</translation>
    </message>
    <message>
        <source>not supported</source>
        <translation>不受支持</translation>
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
        <source>Stop asking the bones; the next change asks again</source>
        <translation>停止询问骨骼；下次更改时再询问</translation>
    </message>
    <message>
        <source>Claims</source>
        <translation>论断</translation>
    </message>
    <message>
        <source>A claim says what the animal could do, such as “head at least 8.5 m high”. The bones answer whether they support it, in which pose, which joints stop it, and which overlap or cartilage it would take.</source>
        <translation>论断说明动物能做什么，例如“头至少高 8.5 米”。骨骼回答是否支持、在哪种姿态下、受哪些关节限制，以及需要多大的重叠或软骨。</translation>
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
        <source>asking, %1 %</source>
        <translation>正在询问，%1 %</translation>
    </message>
    <message>
        <source>asking</source>
        <translation>正在询问</translation>
    </message>
    <message>
        <source>Ask again</source>
        <translation>重新询问</translation>
    </message>
    <message>
        <source>1 claim</source>
        <translation>1 项论断</translation>
    </message>
    <message>
        <source>%1 claims</source>
        <translation>%1 项论断</translation>
    </message>
    <message>
        <source>%1 of %2 supported</source>
        <translation>%2 项中 %1 项受支持</translation>
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
        <source>800 kg/m³ for the trunk (used with hulls by Sellers et al. 2012), less for the neck's air spaces, 1000 for limbs: author's choice</source>
        <translation>躯干 800 kg/m³（Sellers 等 2012 与包络一同使用），颈部因气腔而较小，四肢 1000：作者的选择</translation>
    </message>
    <message>
        <source>Usual densities</source>
        <translation>通常密度</translation>
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
        <source>thickness of the body guide</source>
        <translation>体形参考的厚度</translation>
    </message>
    <message>
        <source>Take the scan of %1 out</source>
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
        <source>metres</source>
        <translation>米</translation>
    </message>
    <message>
        <source>centimetres</source>
        <translation>厘米</translation>
    </message>
    <message>
        <source>millimetres</source>
        <translation>毫米</translation>
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
        <source>Zygapose projects and tables (*.zyga *.csv)</source>
        <translation>Zygapose 项目与测量表 (*.zyga *.csv)</translation>
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
        <source>Zygapose project (*.zyga)</source>
        <translation>Zygapose 项目 (*.zyga)</translation>
    </message>
    <message>
        <source>Save as…</source>
        <translation>另存为……</translation>
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
        <source>The bones support every joint as it is posed.</source>
        <translation>骨骼支持每个关节的当前姿态。</translation>
    </message>
    <message>
        <source>Also list the joints that are supported or not judged</source>
        <translation>同时列出受支持或未判定的关节</translation>
    </message>
    <message>
        <source>Findings, worst first</source>
        <translation>判定结果，最差者在前</translation>
    </message>
    <message>
        <source>under %1</source>
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
        <source>% of bone</source>
        <translation>% 骨骼</translation>
    </message>
    <message>
        <source>My own</source>
        <translation>自定</translation>
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
        <source>Neutral: %1 (%2 off)</source>
        <translation>中性：%1（残差 %2）</translation>
    </message>
    <message>
        <source>Turn %1</source>
        <translation>转动 %1</translation>
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
        <source>Lengths along the column, from snout to tail tip; the head's height is that of the snout over the ground</source>
        <translation>沿脊柱从吻端到尾端的长度；头高为吻端离地的高度</translation>
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
        <source>Ground</source>
        <translation>地面</translation>
    </message>
    <message>
        <source>Poses</source>
        <translation>姿态</translation>
    </message>
    <message>
        <source>Findings</source>
        <translation>判定结果</translation>
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
        <source>The bones are still being sculpted. Try again when they are on screen.</source>
        <translation>骨骼仍在塑形。待其显示后再试。</translation>
    </message>
    <message>
        <source>Stand</source>
        <translation>站立</translation>
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
        <source>&amp;Draw the reach envelope</source>
        <translation>绘制可达包络(&amp;D)</translation>
    </message>
    <message>
        <source>measured</source>
        <translation>实测</translation>
    </message>
    <message>
        <source>inferred: %1</source>
        <translation>推断：%1</translation>
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
        <source>least %1 of area</source>
        <translation>至少面积的 %1</translation>
    </message>
    <message>
        <source>least %1 of length</source>
        <translation>至少长度的 %1</translation>
    </message>
    <message>
        <source>Length shared</source>
        <translation>共有长度</translation>
    </message>
    <message>
        <source>Area shared</source>
        <translation>共有面积</translation>
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
        <source> (the animal has no such bone)</source>
        <translation>（该动物没有这块骨骼）</translation>
    </message>
    <message>
        <source>%n pinned</source>
        <translation>已钉 %n 条</translation>
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
        <source>%1: %2. Under %3.</source>
        <translation>%1：%2。假设：%3。</translation>
    </message>
    <message>
        <source>Under %1. They are among the named poses now.</source>
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
        <source>Unlock %1</source>
        <translation>解锁 %1</translation>
    </message>
    <message>
        <source>Lock %1</source>
        <translation>锁定 %1</translation>
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
        <source>Report</source>
        <translation>报告</translation>
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
        <source>Writing %1</source>
        <translation>正在写出 %1</translation>
    </message>
    <message>
        <source>Open it</source>
        <translation>打开</translation>
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
        <source>Shall be</source>
        <translation>应为</translation>
    </message>
    <message>
        <source>%1 to %2 mm</source>
        <translation>%1 到 %2 毫米</translation>
    </message>
    <message>
        <source>Every length becomes %1 times what it is. What was found is then marked as scaled from another specimen.</source>
        <translation>每个长度变为原来的 %1 倍。已发现的部分此后标为由另一标本按比例换算。</translation>
    </message>
    <message>
        <source>Type the length it shall have.</source>
        <translation>输入它应有的长度。</translation>
    </message>
    <message>
        <source>&amp;Bring in bones…</source>
        <translation>导入骨骼(&amp;B)……</translation>
    </message>
    <message>
        <source>&amp;Mark on the bench…</source>
        <translation>在工作台上标记(&amp;M)……</translation>
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
        <source>&amp;Take the scan out</source>
        <translation>移除扫描(&amp;T)</translation>
    </message>
    <message>
        <source>Scale the &amp;animal…</source>
        <translation>缩放动物(&amp;A)……</translation>
    </message>
    <message>
        <source>Mark on the bench…</source>
        <translation>在工作台上标记……</translation>
    </message>
    <message>
        <source>Mirror to the other side</source>
        <translation>镜像到另一侧</translation>
    </message>
    <message>
        <source>Take the scan out</source>
        <translation>移除扫描</translation>
    </message>
    <message>
        <source>Open a sample, a table or a project first: real bones take their places in an animal.</source>
        <translation>请先打开样本、表格或项目：真实骨骼要放入一只动物之中。</translation>
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
        <source>Landmarks</source>
        <translation>标志点</translation>
    </message>
    <message>
        <source>Bring in %1</source>
        <translation>导入 %1</translation>
    </message>
    <message>
        <source>Bring in %1 bones</source>
        <translation>导入 %1 块骨骼</translation>
    </message>
    <message>
        <source>%1 is in place. Its marks decide how it lies and what its joints support.</source>
        <translation>%1 已就位。其标记决定它如何放置以及其关节支持什么。</translation>
    </message>
    <message>
        <source>%1 bones are in place. Their marks decide how they lie and what their joints support.</source>
        <translation>%1 块骨骼已就位。其标记决定它们如何放置以及其关节支持什么。</translation>
    </message>
    <message>
        <source>Mark on the bench</source>
        <translation>在工作台上标记</translation>
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
        <source>The bones could not be sculpted: %1. Posing and judging go on without them.</source>
        <translation>骨骼无法塑形：%1。姿态与判定照常进行。</translation>
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
        <source>Close</source>
        <translation>关闭</translation>
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
        <source>Draws</source>
        <translation>抽样次数</translation>
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
        <source>%1: snout at %2 m, under %3.</source>
        <translation>%1：吻端在 %2 米，假设：%3。</translation>
    </message>
    <message>
        <source>Beyond range: %1.</source>
        <translation>超出范围：%1。</translation>
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
        <source>Slope of the hindmost cervical's neural canal, positive when it rises forwards</source>
        <translation>最后一节颈椎椎管的坡度，向前升高为正</translation>
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
        <source>trunk %1, hip %2</source>
        <translation>躯干 %1，髋 %2</translation>
    </message>
    <message>
        <source>on the ground</source>
        <translation>在地面上</translation>
    </message>
    <message>
        <source>%1 %2 ground</source>
        <translation>%2地面 %1</translation>
    </message>
    <message>
        <source>over</source>
        <translation>高于</translation>
    </message>
    <message>
        <source>under</source>
        <translation>低于</translation>
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
        <source>Unlock all joints</source>
        <translation>解锁全部关节</translation>
    </message>
    <message>
        <source>Key to the marks</source>
        <translation>标记说明</translation>
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
        <source>Work out again</source>
        <translation>重新计算</translation>
    </message>
    <message>
        <source>Work out</source>
        <translation>计算</translation>
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
        <source>%1 could not be worked out: %2.</source>
        <translation>%1 无法算出：%2。</translation>
    </message>
    <message>
        <source>Supported dorsiflexion and lateral flexion</source>
        <translation>受支持的背屈与侧屈</translation>
    </message>
    <message>
        <source>What the bones support when this joint is raised or lowered (up, down) and bent to a side (left, right), its torsion as it is. Drag the mark to turn the joint; arrow keys do the same.</source>
        <translation>在当前扭转下，此关节升降（上、下）与侧弯（左、右）时骨骼所支持的范围。拖动标记以转动关节；方向键作用相同。</translation>
    </message>
    <message>
        <source>dorsiflexion %1, lateral flexion %2, %3</source>
        <translation>背屈 %1，侧屈 %2，%3</translation>
    </message>
    <message>
        <source>%1 was opened with remarks</source>
        <translation>%1 已打开，有备注</translation>
    </message>
    <message>
        <source>%1 has one fault</source>
        <translation>%1 有一处错误</translation>
    </message>
    <message>
        <source>%1 has %2 faults</source>
        <translation>%1 有 %2 处错误</translation>
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
        <source>Measurement table</source>
        <translation>测量表</translation>
    </message>
    <message>
        <source>Nothing was opened, and what was open is as it was. Mend the table and open it again.</source>
        <translation>没有打开任何内容，原先打开的内容保持不变。请修正该表后重新打开。</translation>
    </message>
    <message>
        <source>The table is in use. These cells deserve a second look.</source>
        <translation>该表已在使用。这些单元格值得再看一遍。</translation>
    </message>
    <message>
        <source>Copy all</source>
        <translation>全部复制</translation>
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
        <source>Remove</source>
        <translation>移除</translation>
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
        <source>Bring under the feet</source>
        <translation>移到脚下</translation>
    </message>
    <message>
        <source>Move the trackway to where it lies best under the feet</source>
        <translation>将行迹移到与脚最吻合之处</translation>
    </message>
    <message>
        <source>Step onto it</source>
        <translation>踏上行迹</translation>
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
        <source>Bring the trackway under the feet</source>
        <translation>将行迹移到脚下</translation>
    </message>
    <message>
        <source>Step onto the trackway</source>
        <translation>踏上行迹</translation>
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
        <source>Under %1</source>
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
