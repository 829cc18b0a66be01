using ShowSafety.Brief.Typesetting;

namespace ShowSafety.Brief.Tests.Typesetting;

public sealed class PageFurnitureTests
{
    [Fact]
    public void LayOut_EveryPage_CarriesEventDateVersionMarksAndItsNumber()
    {
        IReadOnlyList<LaidOutPage> pages = SampleDocument.Of(SampleDocument.Rows(120)).LayOut();

        Assert.True(pages.Count > 2);
        for (int i = 0; i < pages.Count; i++)
        {
            string[] texts = [.. pages[i].Items.OfType<TextItem>().Where(t => t.Artifact).Select(t => t.Text)];
            Assert.Contains("Spring open day, Alderwick hall", texts);
            Assert.Contains("Saturday 9 May 2026", texts);
            Assert.Contains("Plan 4f2a91c07b", texts);
            Assert.Contains("EXAMPLE", texts);
            Assert.Contains($"page {i + 1} of {pages.Count}", texts);
        }
    }

    [Fact]
    public void Items_VeryLongNames_AreCutAndNeverRunIntoEachOther()
    {
        var furniture = new PageFurniture(
            SampleDocument.Words(60),
            SampleDocument.Words(30),
            SampleDocument.Words(60),
            []
        );

        TextItem[] texts = [.. furniture.Items(1, 1).OfType<TextItem>()];

        Assert.All(texts, t => Assert.True(t.X + t.Width <= Paper.WidthMillimetres - Paper.SideMillimetres + 1e-6));
        Assert.True(texts[0].X + texts[0].Width < texts[1].X);
        Assert.True(texts[2].X + texts[2].Width < texts[3].X);
        Assert.Equal("page 1 of 1", texts[3].Text);
    }

    [Fact]
    public void Items_Marks_StandAboveTheBodyWithoutTouchingIt()
    {
        var furniture = new PageFurniture("", "", "", ["NOT TO RUN", "EXAMPLE"]);

        BoxItem[] marks = [.. furniture.Items(1, 1).OfType<BoxItem>()];

        Assert.Equal(2, marks.Length);
        Assert.All(marks, mark => Assert.True(mark.Y + mark.Height < Paper.BodyTopMillimetres));
        Assert.True(marks[0].X + marks[0].Width < marks[1].X);
    }
}
