#include "tests/app/program.h"

namespace zyga::app {
namespace {

using testing::HasSubstr;

class ReportVerb : public Program {
 protected:
  ReportVerb() { setCache(ZYGAPOSE_TEST_CACHE); }

  static int count(const std::string& text, const std::string& what) {
    int n = 0;
    for (auto at = text.find(what); at != std::string::npos; at = text.find(what, at + 1)) ++n;
    return n;
  }
};

TEST_F(ReportVerb, PdfAndHtmlAreTheSameBytesEveryTime) {
  smallAnimal();
  for (const std::string ending : {".pdf", ".html"}) {
    const auto first = run({"report", "small.zyga", "--out", "a" + ending, "--numbers", "a.csv"});
    ASSERT_EQ(first.exit, 0) << first.err;
    ASSERT_EQ(run({"report", "small.zyga", "--out", "b" + ending, "--numbers", "b.csv"}).exit, 0);
    EXPECT_EQ(bytes("a" + ending), bytes("b" + ending));
    EXPECT_EQ(bytes("a.csv"), bytes("b.csv"));
  }
  EXPECT_THAT(bytes("a.pdf"), testing::StartsWith("%PDF-1."));
  EXPECT_GT(count(bytes("a.pdf"), "/Type /Page\n"), 3);
  EXPECT_THAT(bytes("a.html"), HasSubstr("Small invented animal"));
  EXPECT_THAT(bytes("a.html"), HasSubstr("<svg"));
  EXPECT_THAT(bytes("a.html"), HasSubstr("data:image/png;base64,"));
  EXPECT_THAT(bytes("a.html"), HasSubstr("Not an engineering document; local codes and licensed practice decide."));
  EXPECT_THAT(bytes("a.csv"), HasSubstr("\nstand.snout_height,"));
}

TEST_F(ReportVerb, ClaimsFitOnePage) {
  smallAnimal();
  ASSERT_EQ(run({"claim", "small.zyga", "--head-height-m", "1", "--out", "claimed.zyga"}).exit, 0);
  const auto ended = run({"report", "claimed.zyga", "--claims-only", "--out", "claim.pdf", "--numbers", "claim.json"});
  ASSERT_EQ(ended.exit, 0) << ended.err;
  EXPECT_EQ(count(bytes("claim.pdf"), "/Type /Page\n"), 1);
  EXPECT_THAT(bytes("claim.json"), HasSubstr("\"claim.1.supported\": {\"value\": 1}"));
}

TEST_F(ReportVerb, TellsBadOptionsBeforeAnyWork) {
  smallAnimal();
  EXPECT_THAT(run({"report", "small.zyga", "--out", "a.doc"}).err, HasSubstr("must end in .pdf or .html"));
  EXPECT_THAT(run({"report", "small.zyga"}).err, HasSubstr("--out is missing"));
  EXPECT_THAT(run({"report", "small.zyga", "--out", "a.pdf", "--numbers", "a.txt"}).err,
              HasSubstr("must end in .csv or .json"));
  EXPECT_EQ(run({"report", "small.zyga", "--out", "no/a.pdf"}).exit, 2);
}

TEST_F(ReportVerb, CompareTellsWhatDiffersBetweenPosesAndFiles) {
  smallAnimal();
  ASSERT_EQ(run({"bend", "small.zyga", "--joint", "C3-C4", "--dorsiflexion", "5", "--out", "bent.zyga"}).exit, 0);
  const auto told = run({"compare", "small.zyga", "bent.zyga", "--json"});
  ASSERT_EQ(told.exit, 0) << told.err;
  const auto joints = told.json()["joints"].toArray();
  ASSERT_EQ(joints.size(), 1);
  EXPECT_EQ(joints[0].toObject()["joint"].toString(), "C3-C4");
  EXPECT_NEAR(joints[0].toObject()["second_deg"].toArray()[0].toDouble(), 5, 1e-6);
  EXPECT_THAT(run({"compare", "small.zyga"}).err, HasSubstr("name two poses"));
  EXPECT_THAT(run({"compare", "small.zyga", "--first", "nothing"}).err, HasSubstr("there is no pose 'nothing'"));
  EXPECT_THAT(run({"compare", "small.zyga", "bent.zyga"}).out, HasSubstr("snout over the ground"));
}

}  // namespace
}  // namespace zyga::app
