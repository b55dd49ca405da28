namespace Apprentice;
