using ShowSafety.Brief.Drawing;

namespace ShowSafety.Brief.Tests.Drawing;

public sealed class SequenceTests
{
    [Fact]
    public void Equals_SameMembers_IsTrueAndHashesAlike()
    {
        Sequence<int> one = [1, 2, 3];
        Sequence<int> other = new[] { 1, 2, 3 }.ToSequence();

        Assert.Equal(one, other);
        Assert.Equal(one.GetHashCode(), other.GetHashCode());
    }

    [Theory]
    [InlineData(1, 2)]
    [InlineData(1, 3, 2)]
    [InlineData(1, 2, 3, 4)]
    public void Equals_OtherMembers_IsFalse(params int[] others)
    {
        Sequence<int> one = [1, 2, 3];

        Assert.False(one.Equals(others.ToSequence()));
    }

    [Fact]
    public void Equals_WholeDrawings_ComparesTheirContents()
    {
        Assert.Equal(SampleDrawing.Hall(), SampleDrawing.Hall());
        Assert.NotEqual(SampleDrawing.Hall(), SampleDrawing.Hall() with { NorthDegrees = 31 });
    }
}
