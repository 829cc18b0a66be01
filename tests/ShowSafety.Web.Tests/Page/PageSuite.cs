namespace ShowSafety.Web.Tests.Page;

/// <summary>
/// Tests in Chromium: one browser and one service for all, one after the other, because each of them keeps a processor
/// busy.
/// </summary>
[CollectionDefinition(Name)]
public sealed class PageSuite : ICollectionFixture<RunningService>, ICollectionFixture<Browser>
{
    public const string Name = "page";
}
